import type { FolderProblems } from './folder-problems.ts';
import { ownEntries } from './own-entries.ts';
import { readLots } from './read-lots.ts';
import { readPeople } from './read-people.ts';
import type { Lot, Person, Site } from './trial.ts';
import type { YamlFile } from './yaml/read-yaml.ts';

/** A file with errors, in which more ids may stand than were understood: none of them is called unknown then. */
export type Unsure = 'people' | 'lots';

/** Lots and people that a trial may name: those of the site and its own. */
export interface References {
  readonly lots: ReadonlyMap<string, Lot>;
  readonly people: ReadonlyMap<string, Person>;
  readonly unsure: ReadonlySet<Unsure>;
  /** The trial's own files that were read. */
  readonly files: readonly { readonly name: string; readonly yaml: YamlFile }[];
}

/** Reads a trial's own lots.yaml and people.yaml and puts them beside the site's. */
export function readReferences(
  files: ReadonlyMap<string, Uint8Array>,
  problems: FolderProblems,
  site: Site,
  siteUnsure: ReadonlySet<Unsure>,
): References {
  const lotsBytes = files.get('lots.yaml');
  const peopleBytes = files.get('people.yaml');
  const lotsReport = problems.in('lots.yaml');
  const peopleReport = problems.in('people.yaml');
  const lots = lotsBytes ? readLots(lotsBytes, lotsReport) : null;
  const people = peopleBytes ? readPeople(peopleBytes, peopleReport) : null;

  const unsure = new Set(siteUnsure);
  if (lotsBytes && !lots) unsure.add('lots');
  if (peopleBytes && !people) unsure.add('people');
  return {
    lots: ownEntries(site.lots, lots && { entries: lots.lots, yaml: lots.yaml }, lotsReport),
    people: ownEntries(site.people, people && { entries: people.people, yaml: people.yaml }, peopleReport),
    unsure,
    files: [
      ...(lots ? [{ name: 'lots.yaml', yaml: lots.yaml }] : []),
      ...(people ? [{ name: 'people.yaml', yaml: people.yaml }] : []),
    ],
  };
}
