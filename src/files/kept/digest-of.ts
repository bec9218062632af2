import { createHash } from 'node:crypto';

const known = new WeakMap<object, string>();

/** Digest of what an object holds, worked out once: for keys of the keeper. The object must not change afterwards. */
export function digestOf(value: object): string {
  const digest = known.get(value) ?? createHash('sha256').update(JSON.stringify(value)).digest('hex');
  known.set(value, digest);
  return digest;
}
