import { rename } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { withUnfinished } from './with-unfinished.ts';
import { writeThrough } from './write-through.ts';
import { writing } from './writing.ts';

/**
 * Writes a file in place of one that may be there: at every moment the path holds the old bytes or the new ones, whole.
 *
 * @throws {Unwritten} where the place cannot be written to; the old file is as it was
 */
export function replaceFile(path: string, bytes: Uint8Array): Promise<void> {
  return writing(path, () =>
    withUnfinished(dirname(path), async (folder) => {
      const whole = join(folder, 'file');
      await writeThrough(whole, bytes);
      await rename(whole, path);
    }),
  );
}
