import { lstat, readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { repeatedTrial, type RepeatedTrial } from '../archive/repeated-trial.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import type { Problem } from '../trial/problem.ts';
import type { Question } from '../trial/trial.ts';
import { shownPath } from './shown-path.ts';

/** A published trial of another site: the zip of its data folder under repeats/. */
export interface Repeat {
  /** Name of the zip without its ending: what a question calls it. */
  readonly id: string;
  /** Null where it is refused, or no question names it. */
  readonly repeated: RepeatedTrial | null;
  readonly problems: readonly Problem[];
}

/** The largest zip that is opened. */
const MOST_BYTES = 100_000_000;

/**
 * The zips under repeats/, sorted by name. Each that a question names is unpacked in memory and worked out again before it
 * counts; nothing of it is written anywhere.
 *
 * @param path   of the content folder
 * @param trials ids of this site's own trials: a zip of the same name could not be told from it
 */
export async function readRepeats(
  path: string,
  questions: Readonly<Record<string, Question>>,
  trials: readonly string[],
): Promise<readonly Repeat[]> {
  const named = new Set(Object.values(questions).flatMap((question) => question.trials.map(({ trial }) => trial)));
  const names = (await readdir(join(path, 'repeats')).catch(() => [])).filter((name) => !name.startsWith('.'));
  const repeats: Repeat[] = [];
  for (const name of names.toSorted()) {
    const id = name.replace(/\.zip$/, '');
    const folder = new FolderProblems(shownPath(path));
    const report = folder.in(`repeats/${name}`);
    let repeated: RepeatedTrial | null = null;
    if (id === name || !named.has(id)) {
      report.notice(WHOLE_FILE, {
        rule: 'repeat-unused',
        message: id === name ? 'nothing reads this: it is no zip' : 'no question names this zip, so it is not read',
        remedy:
          id === name
            ? 'Put the zip of a published trial here, as its site offers it.'
            : `Name "${id}" among the trials of a question in questions.yaml.`,
      });
    } else if (trials.includes(id)) {
      report.error(WHOLE_FILE, {
        rule: 'repeat-name-taken',
        message: `there is a trial "${id}" in trials/ as well, so a question cannot tell them apart`,
        remedy: 'Give the zip another name, and use that name in questions.yaml.',
      });
    } else {
      const found = await opened(path, name);
      if (typeof found !== 'string') repeated = found;
      else {
        report.error(WHOLE_FILE, {
          rule: 'repeat-refused',
          message: `this trial of another site does not count: ${lowered(found)}`,
          remedy: 'Fetch the zip again from the report on its own site, or take it out of questions.yaml.',
        });
      }
    }
    repeats.push({ id, repeated, problems: folder.problems });
  }
  return repeats;
}

async function opened(content: string, name: string): Promise<RepeatedTrial | string> {
  const path = join(content, 'repeats', name);
  const [root, target] = await Promise.all([realpath(content), realpath(path).catch(() => null)]);
  if (target === null || !target.startsWith(root + sep)) return 'It is a link that leads out of the content folder.';
  if (!(await lstat(target)).isFile()) return 'It is not a file.';
  if ((await stat(target)).size > MOST_BYTES) return 'The zip is larger than that of any trial (100 MB).';
  return repeatedTrial(await readFile(target));
}

const lowered = (text: string) => text.charAt(0).toLowerCase() + text.slice(1).replace(/\.$/, '');
