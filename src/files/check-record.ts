import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { toldTrial } from '../archive/told-trial.ts';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import { inputsDigest } from '../trial/inputs-digest.ts';
import type { Problem } from '../trial/problem.ts';
import { readRecord, type PublishedState } from '../trial/read-record.ts';
import type { TrialFolder } from './read-trial-folder.ts';
import { shownPath } from './shown-path.ts';

/** What published.yaml says, and what it should say now. */
export interface Record {
  /** Of each trial whose report stands: finished or abandoned, and without errors. */
  readonly now: ReadonlyMap<string, Omit<PublishedState, 'date'>>;
  readonly before: ReadonlyMap<string, PublishedState>;
  /** Errors of published.yaml itself. */
  readonly problems: readonly Problem[];
  /** The trials, each with a warning where its files changed without a new entry under `changes`. */
  readonly trials: readonly TrialFolder[];
}

/** Holds the trials of a content folder against published.yaml, where there is one. */
export async function checkRecord(path: string, trials: readonly TrialFolder[]): Promise<Record> {
  const folder = new FolderProblems(shownPath(path));
  const bytes = await readFile(join(path, 'published.yaml')).catch(() => null);
  const before = (bytes && readRecord(bytes, folder.in('published.yaml'))) ?? new Map<string, PublishedState>();
  const now = new Map<string, Omit<PublishedState, 'date'>>();
  for (const { id, trial } of trials) {
    if (trial?.status !== 'finished' && trial?.status !== 'abandoned') continue;
    now.set(id, { digest: inputsDigest(toldTrial(trial)), version: 1 + trial.changes.length });
  }
  const warned = trials.map((entry) => {
    const [was, is] = [before.get(entry.id), now.get(entry.id)];
    if (!was || !is || was.digest === is.digest || is.version > was.version) return entry;
    return { ...entry, problems: [...entry.problems, ...unsaid(entry, was)] };
  });
  return { now, before, problems: folder.problems, trials: warned };
}

function unsaid({ folder }: TrialFolder, { date }: PublishedState): readonly Problem[] {
  const problems = new FolderProblems(folder);
  problems.in('trial.yaml').warning(
    { ...WHOLE_FILE, field: 'changes' },
    {
      rule: 'change-unsaid',
      message: `the files of this trial are not those that were published (recorded on ${date}), and "changes" says nothing new`,
      remedy: 'Add an entry under "changes" with date, what and why; then run npm run check -- --record.',
    },
  );
  return problems.problems;
}
