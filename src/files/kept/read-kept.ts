import { createHash } from 'node:crypto';
import { readFileSync, utimesSync } from 'node:fs';

const DIGEST = 64;
const sha256 = (content: Uint8Array): string => createHash('sha256').update(content).digest('hex');

/** What is written to keep `content`: its digest, then itself. */
export const withDigest = (content: Uint8Array): Uint8Array =>
  Buffer.concat([Buffer.from(sha256(content), 'latin1'), content]);

/** What a file keeps; null where there is none, or where it is not whole as it was written. */
export function readKept(file: string): Uint8Array | null {
  try {
    const content = readFileSync(file);
    const rest = content.subarray(DIGEST);
    if (content.toString('latin1', 0, DIGEST) !== sha256(rest)) return null;
    utimesSync(file, new Date(), new Date()); // for `prune`
    return new Uint8Array(rest.buffer, rest.byteOffset, rest.length);
  } catch {
    return null;
  }
}
