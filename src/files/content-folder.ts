import { resolve } from 'node:path';

/** The content folder in use: FAIRSOWN_CONTENT, else `content` in the folder in which the command runs. */
export function contentFolder(): string {
  return resolve(process.env.FAIRSOWN_CONTENT ?? 'content');
}
