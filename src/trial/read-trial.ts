import { buildTrial } from './build-trial.ts';
import { checkFolder } from './check-folder.ts';
import { checkRecords } from './check-records.ts';
import { checkTrialYaml } from './check-trial-yaml.ts';
import { FolderProblems } from './folder-problems.ts';
import { ownEntries } from './own-entries.ts';
import type { Problem } from './problem.ts';
import { readLots } from './read-lots.ts';
import { readPeople } from './read-people.ts';
import { readPhotos } from './read-photos.ts';
import { readPlan } from './read-plan.ts';
import { readTables } from './read-tables.ts';
import { readTrialYaml, type TrialYaml } from './read-trial-yaml.ts';
import { readYamlEvents } from './read-yaml-events.ts';
import { treatmentOf } from './treatment-of.ts';
import type { TrialContext } from './trial-context.ts';
import type { Lot, Site, Trial } from './trial.ts';

export interface TrialSource {
  /** The folder's name. */
  readonly id: string;
  /** Path of the folder as shown in problems: `content/trials/leek`. */
  readonly folder: string;
  /** Bytes by name within the folder: `counts.csv`, `photos/captions.yaml`. Of pictures only the names are used. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly site: Site;
}

/**
 * A trial from the raw files of its folder, in Node and in a browser alike.
 *
 * @returns all problems of all files, in file order; the trial where no error stands among them
 */
export function readTrial({ id, folder, files, site }: TrialSource): {
  readonly trial: Trial | null;
  readonly problems: readonly Problem[];
} {
  const problems = new FolderProblems(folder);
  checkFolder(id, files, problems);
  const yamlReport = problems.in('trial.yaml');
  const trialYaml = readTrialYaml(files.get('trial.yaml'), yamlReport);

  const ownLots = read('lots.yaml', readLots);
  const ownPeople = read('people.yaml', readPeople);
  const lots = ownEntries(site.lots, ownLots && { ...ownLots, entries: ownLots.lots }, problems.in('lots.yaml'));
  const people = ownEntries(
    site.people,
    ownPeople && { ...ownPeople, entries: ownPeople.people },
    problems.in('people.yaml'),
  );
  if (trialYaml) checkTrialYaml(trialYaml, yamlReport, new Set(people.keys()), new Set(lots.keys()));

  const context = contextOf(trialYaml, lots);
  const tables = readTables(files, problems, context, trialYaml?.given.outcomes);
  const plan = read('plan.yaml', readPlan);
  const yamlEvents = trialYaml ? readYamlEvents(trialYaml, yamlReport, tables.names) : [];
  const photos = readPhotos(files, problems, tables.names, context.sown);
  if (trialYaml) checkRecords({ trialYaml, tables, context, files, plan }, problems);

  const whole = trialYaml?.whole;
  if (!whole || problems.hasErrors) return { trial: null, problems: problems.problems };
  const events = [...yamlEvents, ...tables.events];
  const trial = buildTrial({ id, whole, site, lots, people, context, tables, plan, events, photos, files });
  return { trial, problems: problems.problems };

  function read<Result>(name: string, reader: (bytes: Uint8Array, report: ReturnType<typeof problems.in>) => Result) {
    const bytes = files.get(name);
    return bytes ? reader(bytes, problems.in(name)) : null;
  }
}

function contextOf(trialYaml: TrialYaml | null, lots: ReadonlyMap<string, Lot>): TrialContext {
  const { status, sown, scoring, lots: lotIds, treatments, storage } = trialYaml?.given ?? {};
  const distinct = treatments !== undefined && new Set(treatments.map(({ id }) => id)).size === treatments.length;
  return {
    status: status ?? null,
    sown: sown ?? null,
    blind: scoring?.blind ?? 'unknown',
    counts: scoring?.counts ?? 'cumulative',
    lots: lotIds?.every((id) => lots.has(id)) ? new Map(lotIds.map((id) => [id, lots.get(id) as Lot])) : null,
    treatments: distinct ? new Map(treatments?.map((given) => [given.id, treatmentOf(given)])) : null,
    storage: storage !== undefined,
  };
}
