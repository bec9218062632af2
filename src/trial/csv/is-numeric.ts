import * as z from 'zod';

/** Whether a column holds numbers: its field says so in its description for JSON Schema. */
export function isNumeric(schema: z.core.$ZodType): boolean {
  const type = z.globalRegistry.get(schema as z.ZodType)?.type;
  if (type === 'number' || type === 'integer') return true;
  const wrapped = schema instanceof z.ZodOptional || schema instanceof z.ZodNullable;
  return wrapped && isNumeric(schema.def.innerType);
}
