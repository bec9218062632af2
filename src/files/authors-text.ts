import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decodeText } from '../trial/text/decode-text.ts';
import { trialFolder } from './trial-folder.ts';

/** What the author of a trial has written beside the data. */
export interface AuthorsText {
  readonly trial: string;
  readonly file: 'report.mdx' | 'report.md';
  readonly text: string;
}

/**
 * The author's own words on a trial.
 *
 * @returns null where there are none, and where `check` refuses the letters that they are written in
 */
export function authorsText(trial: string): AuthorsText | null {
  const folder = trialFolder(trial);
  const file = (['report.mdx', 'report.md'] as const).find((name) => existsSync(join(folder, name)));
  if (file === undefined) return null;
  const decoded = decodeText(readFileSync(join(folder, file)));
  return 'text' in decoded ? { trial, file, text: decoded.text } : null;
}
