import { canonicalJson } from './canonical-json.ts';
import { sha256Hex } from './sha256-hex.ts';
import type { Trial } from './trial.ts';

/** SHA-256 of a trial's input files, as canonical JSON (RFC 8785) of their names, digests and sizes: one digest for all of them. */
export const inputsDigest = ({ inputs }: Pick<Trial, 'inputs'>): string =>
  sha256Hex(new TextEncoder().encode(canonicalJson(inputs)));
