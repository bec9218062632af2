import { canonicalJson } from './canonical-json.ts';
import { sha256Hex } from './sha256-hex.ts';

/**
 * Digest of a frozen plan: SHA-256 of everything in plan.yaml but `fixed` and `digest`, as canonical JSON
 * (RFC 8785, UTF-8). Its first 12 characters stand on the sowing sheet.
 */
export function planDigest(copy: Readonly<Record<string, unknown>>): string {
  const { fixed: _fixed, digest: _digest, ...frozen } = copy;
  return sha256Hex(new TextEncoder().encode(canonicalJson(frozen)));
}
