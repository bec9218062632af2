import { FolderProblems } from '../trial/folder-problems.ts';
import type { Problem } from '../trial/problem.ts';
import { readSite } from '../trial/read-site.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { readFolder } from './read-folder.ts';
import { shownPath } from './shown-path.ts';

const SITE_FILES = ['site.yaml', 'people.yaml', 'lots.yaml', 'questions.yaml'];

/**
 * The site files of a content folder.
 *
 * @param trials trials by id, null for one with errors, where questions are to be checked against them
 */
export async function readSiteFolder(
  path: string,
  trials?: ReadonlyMap<string, Trial | null>,
): Promise<{ readonly site: Site; readonly problems: readonly Problem[] }> {
  const folder = shownPath(path);
  const links = new FolderProblems(folder);
  const files = await readFolder(path, [], (name) => SITE_FILES.includes(name), links);
  const { site, problems } = readSite(files, folder, trials);
  return { site, problems: [...SITE_FILES.flatMap((name) => links.in(name).problems), ...problems] };
}
