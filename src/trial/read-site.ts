import { WHOLE_FILE } from './file-problems.ts';
import { FolderProblems } from './folder-problems.ts';
import type { Problem } from './problem.ts';
import { readLots } from './read-lots.ts';
import { readPeople } from './read-people.ts';
import { readQuestions } from './read-questions.ts';
import type { Unsure } from './read-references.ts';
import { siteFile } from './schema/site.ts';
import type { Site, Trial } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { MOST_BYTES_OF_SITE, readYaml } from './yaml/read-yaml.ts';

/** What a trial is read against where there is no site: nobody and nothing is known. */
export const DEFAULT_SITE: Site = {
  name: 'Seed trials',
  base: 'https://example.org',
  language: 'en',
  licence: 'CC-BY-4.0',
  contact: null,
  units: 'metric',
  onProblem: 'stop',
  notices: [],
  paper: 'a4',
  regenerateBelow: null,
  groupSince: null,
  people: {},
  lots: {},
  questions: {},
};

export interface ReadSite {
  /** With defaults in place of what could not be read. */
  readonly site: Site;
  readonly problems: readonly Problem[];
  /** Files with errors, for `readTrial`. */
  readonly unsure: ReadonlySet<Unsure>;
}

/**
 * The publisher: site.yaml (required), people.yaml, lots.yaml and questions.yaml.
 *
 * @param files bytes by name within the content folder
 * @param folder path of the content folder as shown in problems
 * @param trials trials by id, null for one with errors, where questions are to be checked against them
 */
export function readSite(
  files: ReadonlyMap<string, Uint8Array>,
  folder: string,
  trials?: ReadonlyMap<string, Trial | null>,
): ReadSite {
  const problems = new FolderProblems(folder);
  const bytesOf = (name: string) => files.get(name);

  const people = bytesOf('people.yaml');
  const lots = bytesOf('lots.yaml');
  const questions = bytesOf('questions.yaml');
  const site: Site = {
    ...DEFAULT_SITE,
    ...readPublisher(bytesOf('site.yaml'), problems),
    people: Object.fromEntries(
      (people && readPeople(people, problems.in('people.yaml'), MOST_BYTES_OF_SITE)?.people) ?? [],
    ),
    lots: Object.fromEntries((lots && readLots(lots, problems.in('lots.yaml'), MOST_BYTES_OF_SITE)?.lots) ?? []),
    questions: (questions && readQuestions(questions, problems.in('questions.yaml'), trials)) ?? {},
  };
  const unsure = new Set<Unsure>();
  if (problems.in('people.yaml').hasErrors) unsure.add('people');
  if (problems.in('lots.yaml').hasErrors) unsure.add('lots');
  return { site, problems: problems.problems, unsure };
}

function readPublisher(bytes: Uint8Array | undefined, problems: FolderProblems): Partial<Site> {
  const report = problems.in('site.yaml');
  if (!bytes) {
    report.error(WHOLE_FILE, {
      rule: 'site-missing',
      message: 'there is no site.yaml, which says who publishes',
      remedy: 'Create it with the keys name, base, language and licence.',
    });
    return {};
  }
  const yaml = readYaml(bytes, report);
  const site = yaml && checkYaml(yaml, siteFile, report);
  if (!site) return {};
  return {
    name: site.name,
    base: site.base,
    language: site.language,
    licence: site.licence,
    contact: site.contact ?? null,
    units: site.units ?? 'metric',
    onProblem: site.on_problem ?? 'stop',
    notices: site.notices ?? [],
    paper: site.paper ?? 'a4',
    regenerateBelow: site.regenerate_below ?? null,
    groupSince: site.group_since ?? null,
  };
}
