import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { beginReading } from '../files/begun-reading.ts';
import { KEPT_IN } from '../files/kept/build-keeper.ts';
import { makeFolder } from '../files/make-folder.ts';
import { shownPath } from '../files/shown-path.ts';
import { systemReason } from '../files/system-reason.ts';
import { withUnfinished } from '../files/with-unfinished.ts';
import { writing } from '../files/writing.ts';
import { DataError } from '../trial/data-error.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run build [-- --outDir <folder>] [--force]

Writes the whole site. The content folder is read and never written to.

  --outDir <folder>  where to; "dist" where not given
  --force            makes everything anew, also what was kept from the last build

Ends with 0, with 1 where a trial has an error or the folder cannot be written, with 2 where it was called in a way it
does not know.
`;

/**
 * The command `build`: Astro's own, which says what it does; here what stops it is said in a sentence.
 *
 * @returns the exit code: 0, 1 stopped, 2 usage
 * @throws {Error} where neither the content nor the disk stopped it
 */
export async function runBuild(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const given = optionsOf(args);
  if (given === null || given.help) {
    (given ? terminal.out : terminal.err)(USAGE);
    return given ? 0 : 2;
  }
  const folder = resolve(given.outDir ?? 'dist');
  // Before anything is worked out: Astro takes a disk that can only be read for a folder that is missing.
  await writing(folder, () => makeFolder(folder).then(() => withUnfinished(folder, async () => {}))); // prettier-ignore
  if (given.force) rmSync(resolve(KEPT_IN), { recursive: true, force: true });
  process.env.NODE_ENV ||= 'production'; // as Astro would
  beginReading();
  const { build } = await import('astro');
  try {
    await build({ outDir: folder, ...(given.force ? { force: true } : {}) });
    return 0;
  } catch (error) {
    const sentence = stoppedBy(error as NodeJS.ErrnoException, folder);
    if (sentence === null) throw error;
    terminal.err(`\n${sentence}\n`); // what Astro says has no line end at that moment
    return 1;
  }
}

function stoppedBy(error: NodeJS.ErrnoException, folder: string): string | null {
  if (error instanceof DataError || error.stack === undefined) return error.message;
  const { code, syscall, path } = error;
  if (code === undefined || syscall === undefined) return null;
  return `${shownPath(path ?? folder)}: ${systemReason(code)}. The site in ${shownPath(folder)} is not whole; build it again.`;
}

function optionsOf(args: readonly string[]) {
  try {
    const options = {
      outDir: { type: 'string' },
      force: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    } as const;
    return parseArgs({ args: [...args], options }).values;
  } catch {
    return null;
  }
}
