import { columnName } from './column-name.ts';
import type { TrialFile } from './read-trial-yaml.ts';
import type { Outcome } from './trial.ts';

/** The outcomes of trial.yaml with their defaults; the first says `primary`, or is it where none does. */
export function outcomesOf(given: TrialFile['outcomes']): Outcome[] {
  const outcomes = given ?? [];
  const primary = Math.max(
    0,
    outcomes.findIndex((outcome) => outcome.primary),
  );
  return outcomes.map(({ id, measure, column, day, matters, pool }, index) => ({
    id,
    measure,
    column: column === undefined ? null : columnName(column),
    day: day ?? null,
    matters: matters ?? null,
    primary: index === primary,
    pool: pool ?? false,
  }));
}
