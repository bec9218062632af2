import { globSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Keeps the folder of kept things below a size: what was read or written longest ago goes first.
 *
 * @param most bytes
 */
export function prune(folder: string, most: number): void {
  const files = globSync('*/*/*', { cwd: folder }).flatMap((name) => {
    const file = join(folder, name);
    const stat = statSync(file, { throwIfNoEntry: false });
    return stat?.isFile() ? [{ file, size: stat.size, used: stat.mtimeMs }] : [];
  });
  let left = files.reduce((sum, { size }) => sum + size, 0);
  for (const { file, size } of files.toSorted((a, b) => a.used - b.used)) {
    if (left <= most) return;
    rmSync(file, { force: true });
    left -= size;
  }
}
