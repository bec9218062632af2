import { buildTrial } from './build-trial.ts';
import { checkFolder } from './check-folder.ts';
import { checkRecords } from './check-records.ts';
import { checkTrialYaml } from './check-trial-yaml.ts';
import { contextOf } from './context-of.ts';
import { FolderProblems } from './folder-problems.ts';
import type { Problem } from './problem.ts';
import { readPhotos } from './read-photos.ts';
import { readPlan } from './read-plan.ts';
import { readReferences, type Unsure } from './read-references.ts';
import { readTables } from './read-tables.ts';
import { readTrialYaml } from './read-trial-yaml.ts';
import { readYamlEvents } from './read-yaml-events.ts';
import type { Site, Trial } from './trial.ts';

export interface TrialSource {
  /** The folder's name. */
  readonly id: string;
  /** Path of the folder as shown in problems: `content/trials/leek`. */
  readonly folder: string;
  /** Bytes by name within the folder: `counts.csv`, `photos/captions.yaml`. Of pictures only the names are used. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly site: Site;
  /** Site files with errors (readSite): what a trial names there is not called unknown. */
  readonly unsure?: ReadonlySet<Unsure>;
}

/**
 * A trial from the raw files of its folder, in Node and in a browser alike.
 *
 * @returns all problems of all files, in file order; the trial where no error stands among them or in the site files it leans on
 */
export function readTrial({ id, folder, files, site, unsure = new Set() }: TrialSource): {
  readonly trial: Trial | null;
  readonly problems: readonly Problem[];
} {
  const problems = new FolderProblems(folder);
  checkFolder(id, files, problems);
  const yamlReport = problems.in('trial.yaml');
  const trialYaml = readTrialYaml(files.get('trial.yaml'), yamlReport);

  const references = readReferences(files, problems, site, unsure);
  if (trialYaml) checkTrialYaml(trialYaml, yamlReport, references);

  const context = contextOf(trialYaml, references.lots);
  const tables = readTables(files, problems, context, trialYaml?.given.outcomes);
  const planBytes = files.get('plan.yaml');
  const plan = planBytes ? readPlan(planBytes, problems.in('plan.yaml')) : null;
  const yamlEvents = trialYaml ? readYamlEvents(trialYaml, yamlReport, tables.names) : [];
  const photos = readPhotos(files, problems, tables.names, context.sown);
  if (trialYaml) checkRecords({ trialYaml, tables, context, files, plan }, problems);

  const whole = trialYaml?.whole;
  const allThere = context.lots !== null && whole?.authors.every((author) => references.people.has(author));
  if (!whole || !allThere || problems.hasErrors) return { trial: null, problems: problems.problems };
  const trial = buildTrial({
    id,
    whole,
    site,
    references,
    context,
    tables,
    plan,
    events: [...yamlEvents, ...tables.events],
    photos,
    files,
    yaml: [{ name: 'trial.yaml', yaml: trialYaml.yaml }, ...references.files],
  });
  return { trial, problems: problems.problems };
}
