import * as z from 'zod';
import { unwrap } from './unwrap.ts';

/**
 * The part of a schema that a path leads to, wrappers (optional, nullable, default, transform) taken off where
 * something stands below them. Unions give the first branch that has the path. Undefined where none does.
 */
export function schemaAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): z.core.$ZodType | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return schema;
  const inner = unwrap(schema);
  if (inner instanceof z.ZodUnion) {
    for (const option of inner.options) {
      const found = schemaAt(option, path);
      if (found) return found;
    }
    return undefined;
  }
  const next = child(inner, key);
  return next && schemaAt(next, rest);
}

function child(schema: z.core.$ZodType, key: PropertyKey): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodArray) return typeof key === 'number' ? schema.def.element : undefined;
  if (schema instanceof z.ZodRecord) return schema.def.valueType;
  if (!(schema instanceof z.ZodObject) || !Object.hasOwn(schema.shape, key)) return undefined;
  return schema.shape[String(key)];
}
