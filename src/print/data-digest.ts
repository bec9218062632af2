import type { Analysis } from '../analysis/analysis.ts';
import { canonicalJson } from '../trial/canonical-json.ts';
import { sha256Hex } from '../trial/sha256-hex.ts';

/**
 * Digest of a trial's data: SHA-256 of `inputs` of its analysis (each file with its own SHA-256 and length) as
 * canonical JSON (RFC 8785, UTF-8). Its first 12 characters stand on the printed summary.
 */
export function dataDigest({ inputs }: Analysis): string {
  return sha256Hex(new TextEncoder().encode(canonicalJson(inputs)));
}
