import { createHash } from 'node:crypto';

const known = new WeakMap<object, string>();

/** Digest of what an object holds, worked out once: for keys of the keeper. The object must not change afterwards. */
export function digestOf(value: object): string {
  const digest = known.get(value) ?? createHash('sha256').update(JSON.stringify(value)).digest('hex');
  known.set(value, digest);
  return digest;
}

/** Says what stands for an object as well as its digest: some text of which no other object of its kind has the same. */
export function setDigest(value: object, digest: string): void {
  known.set(value, digest);
}
