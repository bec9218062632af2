import { readFile, rename, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { unzippedTrial } from '../archive/unzipped-trial.ts';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import type { Problem } from '../trial/problem.ts';
import { shown } from '../trial/text/shown.ts';
import { ID } from '../trial/schema/field/id-field.ts';
import { checkAliases } from './check-aliases.ts';
import { makeFolder } from './make-folder.ts';
import { readContent, type Content } from './read-content.ts';
import { readTrialFolder } from './read-trial-folder.ts';
import { shownPath } from './shown-path.ts';
import { withUnfinished } from './with-unfinished.ts';
import { writeThrough } from './write-through.ts';
import { writing } from './writing.ts';

/** Of the zip itself; what it may unpack to is bounded by `unzipped`. */
const MOST_BYTES = 100_000_000;

export interface Accepted {
  readonly problems: readonly Problem[];
  /** Names in the zip that nothing reads. */
  readonly ignored: readonly string[];
  /** Path of the new trial's folder as shown to people; null where an error stands among the problems. */
  readonly folder: string | null;
}

/**
 * Takes a member's trial out of a zip into the content folder, after the same checks as `check`: all its problems at
 * once, with places inside the zip. Written only where there is none, and whole or not at all.
 *
 * @param path    of the zip, anywhere
 * @param content the content folder
 * @returns a sentence that says why, where the zip cannot be opened or is not safe to open
 * @throws {Unwritten} where the content folder cannot be written to; nothing in it has changed then
 */
export async function acceptTrial(path: string, content: string): Promise<Accepted | string> {
  const size = await stat(path).then((found) => (found.isFile() ? found.size : null), () => null); // prettier-ignore
  if (size === null) return 'There is no such file.';
  if (size > MOST_BYTES) return 'It is larger than a trial can be (100 MB).';
  const trial = unzippedTrial(new Uint8Array(await readFile(path)), basename(path));
  if (typeof trial === 'string') return trial;
  const { id, files, ignored } = trial;
  if (!ID.test(id) || id.includes('..')) {
    return `Its folder is named ${shown(id)}, which cannot be the address of a trial; use letters a to z, digits and hyphens.`;
  }

  const root = resolve(content);
  const known = await readContent(root);
  const target = join(root, 'trials', id);
  return writing(target, () =>
    withUnfinished(root, async (unfinished) => {
      const unpacked = join(unfinished, id);
      for (const [name, bytes] of files) {
        await makeFolder(dirname(join(unpacked, name)));
        await writeThrough(join(unpacked, name), bytes);
      }
      const read = await readTrialFolder(unpacked);
      const entry = checkAliases([...known.trials, read]).at(-1) ?? read;
      const inZip = (file: string) => file.replace(read.folder, basename(path));
      const found = entry.problems.map((problem) => ({ ...problem, file: inZip(problem.file) }));
      const problems = [...takenProblems(id, known, basename(path)), ...found];
      if (problems.some(({ level }) => level === 'error')) return { problems, ignored, folder: null };

      await makeFolder(dirname(target));
      await rename(unpacked, target);
      return { problems, ignored, folder: shownPath(target) };
    }),
  );
}

/** A trial of this name, however it is capitalised, or an old address of another trial. */
function takenProblems(id: string, { trials }: Content, zip: string): readonly Problem[] {
  const problems = new FolderProblems(zip);
  const same = (other: string) => other.toLowerCase() === id.toLowerCase();
  const owner = trials.find((entry) => same(entry.id) || entry.trial?.aliases.some(same));
  if (owner) {
    problems.in('').error(WHOLE_FILE, {
      rule: 'trial-exists',
      message: `the name ${shown(id)} is taken by ${owner.folder}`,
      remedy: 'Rename the folder in the zip, or change the trial that is there by hand: nothing is ever overwritten.',
    });
  }
  return problems.problems;
}
