import { join } from 'node:path';
import { contentFolder } from './content-folder.ts';

/** The folder that holds a trial's files. */
export function trialFolder(trial: string): string {
  return join(contentFolder(), 'trials', trial);
}
