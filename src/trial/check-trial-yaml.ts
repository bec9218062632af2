import type { FileProblems } from './file-problems.ts';
import { checkTreatments } from './check-treatments.ts';
import { checkOutcomes } from './check-outcomes.ts';
import type { References, Unsure } from './read-references.ts';
import type { TrialYaml } from './read-trial-yaml.ts';
import { shown } from './text/shown.ts';
import { unknownName } from './text/unknown-name.ts';

/** What trial.yaml names must be there, once each; what it dates must follow in time. */
export function checkTrialYaml(trial: TrialYaml, report: FileProblems, { people, lots, unsure }: References): void {
  const { yaml, given } = trial;
  given.authors?.forEach((id, index) => {
    if (isUnknown(people, 'people', id))
      report.error(yaml.place(['authors', index]), unknownName('person', id, 'people.yaml', people.keys()));
    if (given.authors?.indexOf(id) !== index) refuseTwice(['authors', index], 'person', id);
  });
  for (const id of Object.keys(given.roles ?? {})) {
    if (isUnknown(people, 'people', id))
      report.error(yaml.place(['roles', id]), unknownName('person', id, 'people.yaml', people.keys()));
  }
  given.lots?.forEach((id, index) => {
    if (isUnknown(lots, 'lots', id))
      report.error(yaml.place(['lots', index]), unknownName('lot', id, 'lots.yaml', lots.keys()));
    if (given.lots?.indexOf(id) !== index) refuseTwice(['lots', index], 'lot', id);
  });
  if (given.status !== undefined && given.status !== 'planned' && yaml.value && !hasKey(yaml.value, 'sown')) {
    report.error(yaml.place(['sown']), {
      rule: 'missing',
      message: 'is missing; only a planned trial has no day 0 yet',
      remedy: 'Give the date on which the seed was sown, such as 2026-04-04.',
    });
  }
  if (given.sown && given.finished && given.finished < given.sown) {
    report.error(yaml.place(['finished']), {
      rule: 'before-sowing',
      message: `${given.finished} is before the sowing on ${given.sown}`,
      remedy: 'Look both dates up; one of them is off.',
    });
  }
  checkByLot('impression', given.impression);
  checkTreatments(trial, report);
  checkOutcomes(trial, report);

  function isUnknown(known: ReadonlyMap<string, unknown>, file: Unsure, id: string): boolean {
    return !known.has(id) && !unsure.has(file);
  }

  function checkByLot(key: string, value: unknown): void {
    if (typeof value !== 'object' || value === null || !given.lots) return;
    for (const id of Object.keys(value)) {
      if (!given.lots.includes(id))
        report.error(yaml.place([key, id]), unknownName('lot', id, 'trial.yaml', given.lots));
    }
  }

  function refuseTwice(path: PropertyKey[], kind: string, id: string): void {
    report.error(yaml.place(path), {
      rule: 'given-twice',
      message: `the ${kind} ${shown(id)} is listed twice`,
      remedy: 'Take one of the two out.',
    });
  }
}

const hasKey = (value: unknown, key: string) =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key);
