import { readdirSync, readFileSync, statSync } from 'node:fs';
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
 * @returns null where there are none: no file of this very name, or one in letters that `check` refuses
 */
export function authorsText(trial: string): AuthorsText | null {
  const folder = trialFolder(trial);
  const names = readdirSync(folder); // a disk may take Report.mdx for report.mdx, which nothing has checked
  const file = (['report.mdx', 'report.md'] as const).find((name) => names.includes(name));
  if (file === undefined || !statSync(join(folder, file)).isFile()) return null;
  const decoded = decodeText(readFileSync(join(folder, file)));
  return 'text' in decoded ? { trial, file, text: decoded.text } : null;
}
