import { relative } from 'node:path';

/** A path as problems show it: from the folder in which the command runs, with forward slashes. */
export function shownPath(path: string): string {
  return relative(process.cwd(), path).replaceAll('\\', '/');
}
