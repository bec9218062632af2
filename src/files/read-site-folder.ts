import { FolderProblems } from '../trial/folder-problems.ts';
import { readSite, type ReadSite } from '../trial/read-site.ts';
import type { Trial } from '../trial/trial.ts';
import { readFolder } from './read-folder.ts';
import { shownPath } from './shown-path.ts';

const SITE_FILES = ['site.yaml', 'people.yaml', 'lots.yaml', 'questions.yaml'];

/**
 * The site files of a content folder.
 *
 * @param trials trials by id, null for one with errors, where questions are to be checked against them
 */
export async function readSiteFolder(path: string, trials?: ReadonlyMap<string, Trial | null>): Promise<ReadSite> {
  const folder = shownPath(path);
  const links = new FolderProblems(folder);
  const files = readFolder(path, [], (name) => SITE_FILES.includes(name), links);
  const read = readSite(files, folder, trials);
  return { ...read, problems: [...SITE_FILES.flatMap((name) => links.in(name).problems), ...read.problems] };
}
