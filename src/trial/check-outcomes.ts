import type { FileProblems } from './file-problems.ts';
import type { TrialYaml } from './read-trial-yaml.ts';
import { shown } from './text/shown.ts';
import { unknownName } from './text/unknown-name.ts';

/** Outcomes have ids of their own, a column where they are traits and days for known lots. */
export function checkOutcomes({ yaml, given }: TrialYaml, report: FileProblems): void {
  const outcomes = given.outcomes ?? [];
  outcomes.forEach(({ id, measure, column, day }, index) => {
    const at = (key: string) => yaml.place(['outcomes', index, key]);
    if (outcomes.findIndex((other) => other.id === id) !== index) {
      report.error(at('id'), {
        rule: 'given-twice',
        message: `two outcomes have the id ${shown(id)}`,
        remedy: 'Give each outcome its own id.',
      });
    }
    if (measure === 'trait' && column === undefined) {
      report.error(at('column'), {
        rule: 'missing',
        message: 'is missing; a trait is a column of measurements.csv',
        remedy: 'Give the heading of the column, such as "column: height".',
      });
    }
    if (measure !== 'trait' && column !== undefined) {
      report.error(at('column'), {
        rule: 'not-a-trait',
        message: `found the column ${shown(column)}, but the measure ${shown(measure)} needs none`,
        remedy: 'Write "measure: trait" to compare a column of measurements.csv, or take the column out.',
      });
    }
    for (const lot of typeof day === 'object' && given.lots ? Object.keys(day) : []) {
      if (given.lots?.includes(lot)) continue;
      report.error(
        yaml.place(['outcomes', index, 'day', lot]),
        unknownName('lot', lot, 'trial.yaml', given.lots ?? []),
      );
    }
  });
}
