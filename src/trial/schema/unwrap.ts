import * as z from 'zod';

/** Takes optional, nullable, default and transform off a schema. */
export function unwrap(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault) {
    return unwrap(schema.def.innerType);
  }
  return schema instanceof z.ZodPipe ? unwrap(schema.def.in) : schema;
}
