import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FolderProblems } from '../trial/folder-problems.ts';
import { readPeople } from '../trial/read-people.ts';
import type { Person, Site, Trial } from '../trial/trial.ts';

/**
 * Everyone that trial.yaml names, authors first: people with a role stand in the site's people.yaml or in the
 * trial's own, and without them the published trial.yaml could not be read again.
 *
 * @param folder the trial's folder
 */
export async function peopleNamed(folder: string, trial: Trial, site: Site): Promise<readonly Person[]> {
  const isOwn = trial.inputs.some(({ file }) => file === 'people.yaml');
  const bytes = isOwn ? await readFile(join(folder, 'people.yaml')) : null;
  const own = bytes && readPeople(bytes, new FolderProblems(folder).in('people.yaml'))?.people;
  const known = new Map([...Object.entries(site.people), ...(own ?? [])]);
  const others = Object.keys(trial.roles).filter((id) => !trial.authors.some((author) => author.id === id));
  return [...trial.authors, ...others.flatMap((id) => known.get(id) ?? [])];
}
