import { lstat, readdir, realpath } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import type { Problem } from '../trial/problem.ts';
import { DEFAULT_SITE } from '../trial/read-site.ts';
import type { Site } from '../trial/trial.ts';
import { checkAliases } from './check-aliases.ts';
import { checkRecord, type Record } from './check-record.ts';
import { readRepeats, type Repeat } from './read-repeats.ts';
import { readSiteFolder } from './read-site-folder.ts';
import type { TrialFolder } from './read-trial-folder.ts';
import { readTrials } from './read-trials.ts';
import { shownPath } from './shown-path.ts';
import type { TrialMemory } from './trial-memory.ts';

/** A content folder, read and checked. */
export interface Content {
  /** Path as shown in problems. */
  readonly folder: string;
  readonly site: Site;
  /** One entry a folder under trials/, sorted by name. */
  readonly trials: readonly TrialFolder[];
  /** Published trials of other sites, the zips under repeats/, sorted by name. */
  readonly repeats: readonly Repeat[];
  /** What was published, as published.yaml says. */
  readonly record: Record;
  /** Problems of the folder and the site files; those of each trial and each zip stand with it. */
  readonly problems: readonly Problem[];
}

/**
 * Reads and checks a whole content folder: the site files and every trial. Never throws for what stands in
 * the files; everything there is to say is in the problems.
 *
 * @param progress told of each trial that is read (readTrials)
 * @param memory   of earlier readings of this folder: what it knows of is not read again
 */
export async function readContent(
  path: string,
  progress: (trial: string, index: number, total: number) => void = () => {},
  memory?: TrialMemory,
): Promise<Content> {
  const absolute = resolve(path);
  const folder = shownPath(absolute);
  const problems = new FolderProblems(folder);
  const names = await readdir(absolute).catch(() => null);
  if (names === null) {
    problems.in('').error(WHOLE_FILE, {
      rule: 'folder-missing',
      message: 'there is no such content folder',
      remedy: 'Name it with --content or FAIRSOWN_CONTENT; without either it is "content".',
    });
    return { folder, site: DEFAULT_SITE, trials: [], repeats: [], record: NO_RECORD, problems: problems.problems };
  }

  const first = await readSiteFolder(absolute);
  const ids = await trialNames(absolute, problems);
  const folders = ids.map((id) => join(absolute, 'trials', id));
  const trials = await readTrials(folders, first, progress, { memory });
  const record = await checkRecord(absolute, checkAliases(trials));
  const checked = record.trials;
  const repeats = await readRepeats(absolute, first.site.questions, ids);
  // Read again, now that the trials are known that questions name.
  const known = new Map([
    ...repeats.map(({ id, repeated }) => [id, repeated?.trial ?? null] as const),
    ...checked.map(({ id, trial }) => [id, trial] as const),
  ]);
  const again = await readSiteFolder(absolute, known);
  const all = [...problems.problems, ...again.problems, ...record.problems];
  return { folder, site: again.site, trials: checked, repeats, record, problems: all };
}

const NO_RECORD: Record = { now: new Map(), before: new Map(), problems: [], trials: [] };

/** Folders under trials/; a link that leads out of the content folder is reported and left alone. */
async function trialNames(content: string, problems: FolderProblems): Promise<string[]> {
  const names = await readdir(join(content, 'trials')).catch(() => []);
  const root = await realpath(content);
  const found: string[] = [];
  for (const name of names.toSorted()) {
    if (name.startsWith('.')) continue;
    const target = await realpath(join(content, 'trials', name)).catch(() => null);
    if (target === null || !target.startsWith(root + sep)) {
      problems.in(`trials/${name}`).error(WHOLE_FILE, {
        rule: 'link-outside',
        message: 'this is a link that leads out of the content folder, or nowhere',
        remedy: 'Put the trial itself here.',
      });
    } else if ((await lstat(target)).isDirectory()) found.push(name);
    else {
      problems.in(`trials/${name}`).warning(WHOLE_FILE, {
        rule: 'unknown-file',
        message: 'nothing reads a file here',
        remedy: "Each trial is a folder; put the file into its trial's folder.",
      });
    }
  }
  return found;
}
