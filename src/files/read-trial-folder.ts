import { readdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { DATA_FILES } from '../trial/check-folder.ts';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import type { Problem } from '../trial/problem.ts';
import { DEFAULT_SITE, type ReadSite } from '../trial/read-site.ts';
import type { Trial } from '../trial/trial.ts';
import { checkPictures } from './check-pictures.ts';
import { judgedFiles } from './judged-files.ts';
import { readFolder } from './read-folder.ts';
import { readSiteFolder } from './read-site-folder.ts';
import { shownPath } from './shown-path.ts';

export interface TrialFolder {
  /** The folder's name. */
  readonly id: string;
  /** Path as shown in problems. */
  readonly folder: string;
  /** Null where an error stands among the problems. */
  readonly trial: Trial | null;
  readonly problems: readonly Problem[];
  /** Bytes by name; of pictures and of files that nothing reads the name only. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** File that keeps the trial analysed, while a site is built. */
  readonly analysed: string | null;
}

/**
 * Reads and checks one trial's folder, wherever it is.
 *
 * @param site where it is not given: that of the content folder two levels up, if there is one, whose
 *   problems then come first; else a site that knows nobody and no lots
 */
export async function readTrialFolder(path: string, site?: Pick<ReadSite, 'site' | 'unsure'>): Promise<TrialFolder> {
  const absolute = resolve(path);
  const folder = shownPath(absolute);
  const problems = new FolderProblems(folder);
  const id = basename(absolute);
  if (!isFolder(absolute)) {
    problems.in('').error(WHOLE_FILE, {
      rule: 'folder-missing',
      message: 'there is no such folder',
      remedy: 'Look the path up; a trial is a folder with trial.yaml in it.',
    });
    return { id, folder, trial: null, problems: problems.problems, files: new Map(), analysed: null };
  }

  const files = readFolder(absolute, READ_BELOW, isRead, problems);
  await checkPictures(absolute, files.keys(), problems);
  const around = site ? { ...site, problems: [] } : await siteAround(absolute);
  const { trial, found, words, analysed } = await judgedFiles({ id, folder, files, ...around });
  const siteErrors = around.problems.filter(({ level }) => level === 'error');
  const broken = problems.hasErrors || [...siteErrors, ...words].some(({ level }) => level === 'error');
  return {
    id,
    folder,
    trial: broken ? null : trial,
    problems: [...siteErrors, ...problems.problems, ...found, ...words],
    files,
    analysed,
  };
}

/** Folders in a trial's folder of which the files are looked at. */
export const READ_BELOW: readonly string[] = ['photos', 'sheets'];

const isRead = (name: string) => DATA_FILES.includes(name) || name === 'photos/captions.yaml' || PROSE.includes(name);
const PROSE: readonly string[] = ['report.mdx', 'report.md'];

async function siteAround(trial: string): Promise<ReadSite> {
  const content = dirname(dirname(trial));
  const names = isFolder(content) ? readdirSync(content) : [];
  return names.includes('site.yaml')
    ? readSiteFolder(content)
    : { site: DEFAULT_SITE, problems: [], unsure: new Set() };
}

/** Whether there is a folder that can be looked into. */
function isFolder(path: string): boolean {
  try {
    readdirSync(path);
    return true;
  } catch {
    return false;
  }
}
