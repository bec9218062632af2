import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { trialFolder } from './trial-folder.ts';

/** Digest of all pictures in a trial's folder, their names included; null where it has none. */
export function picturesDigest(trial: string): string | null {
  const folder = join(trialFolder(trial), 'photos');
  if (!existsSync(folder)) return null;
  const hash = createHash('sha256');
  for (const name of globSync('**/*', { cwd: folder }).toSorted()) {
    const file = join(folder, name);
    if (statSync(file, { throwIfNoEntry: false })?.isFile()) hash.update(`\n${name}\n`).update(readFileSync(file));
  }
  return hash.digest('hex');
}
