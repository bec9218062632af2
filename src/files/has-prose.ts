import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { trialFolder } from './trial-folder.ts';

/** True where the author of a trial has written a text of their own, as report.mdx or report.md. */
export const hasProse = (trial: string): boolean =>
  ['report.mdx', 'report.md'].some((file) => existsSync(join(trialFolder(trial), file)));
