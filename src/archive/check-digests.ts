import type { Input } from '../trial/trial.ts';
import { sha256Hex } from '../trial/sha256-hex.ts';

/** A file that is not as it was published. */
export interface FileFinding {
  readonly file: string;
  readonly kind: 'no-sums' | 'sums-altered' | 'missing' | 'altered' | 'put-in' | 'not-made' | 'unreadable';
  /** In English, to follow the name of the file. */
  readonly message: string;
}

const MESSAGES = {
  'no-sums': 'is missing, so that no other file can be held against its digest',
  'sums-altered': 'was altered: a line is no digest and file name',
  missing: 'is missing',
  altered: 'was altered: it is not the file that was published',
  'put-in': 'was put in: it was not published with the trial',
} as const;

/**
 * Holds the files of a published folder against SHA256SUMS and, for raw files, against the digests in
 * analysis.json as well. Files that neither names say nothing, except where a raw file was put in.
 *
 * @param inputs of analysis.json
 * @param raw    names that a raw file can have
 */
export function checkDigests(
  files: ReadonlyMap<string, Uint8Array>,
  inputs: readonly Input[],
  raw: readonly string[],
): readonly FileFinding[] {
  const findings = new Map<string, keyof typeof MESSAGES>();
  const sums = files.get('SHA256SUMS');
  if (!sums) findings.set('SHA256SUMS', 'no-sums');
  const listed = sums ? readSums(new TextDecoder().decode(sums)) : new Map<string, string>();
  if (listed === null) findings.set('SHA256SUMS', 'sums-altered');

  const wanted = [...(listed ?? []), ...inputs.map(({ file, sha256 }) => [file, sha256] as const)];
  for (const [file, sha256] of wanted) {
    const bytes = files.get(file);
    if (!bytes) findings.set(file, 'missing');
    else if (sha256Hex(bytes) !== sha256) findings.set(file, 'altered');
  }
  const known = new Set(wanted.map(([file]) => file));
  for (const file of raw) {
    if (files.has(file) && !known.has(file)) findings.set(file, 'put-in');
  }
  return [...findings].map(([file, kind]) => ({ file, kind, message: MESSAGES[kind] }));
}

function readSums(text: string): ReadonlyMap<string, string> | null {
  const sums = new Map<string, string>();
  if (!text.endsWith('\n')) return null;
  for (const line of text.split('\n').slice(0, -1)) {
    const [, sha256, name] = /^([0-9a-f]{64}) {2}([^\\/]+)$/.exec(line) ?? [];
    if (sha256 === undefined || name === undefined) return null;
    sums.set(name, sha256);
  }
  return sums;
}
