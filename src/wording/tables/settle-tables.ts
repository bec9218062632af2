import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { DetectableByUnits } from '../../analysis/detectable-by-units.ts';
import { leftToSettle } from '../../analysis/left-to-settle.ts';
import type { Trial } from '../../trial/trial.ts';
import { detectableSize } from '../detectable-size.ts';
import { groupsOf } from '../../analysis/groups-of.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

interface Open {
  readonly comparison: Comparison;
  readonly found: DetectableByUnits;
}

/**
 * What would settle the open comparisons of an outcome, lot by lot: a row each, a column for each number of units with the
 * smallest difference that so many would show. What is at the spread seen, at one assumed, or for another difference stands apart.
 */
export function settleTables(
  words: Words,
  trial: Trial,
  result: Result,
  comparisons: readonly Comparison[],
): (TextTable & { readonly caption: string })[] {
  const open = comparisons.flatMap((comparison): Open[] => {
    const found = leftToSettle(result, comparison);
    return found === null ? [] : [{ comparison, found }];
  });
  const alike = Map.groupBy(open, ({ found: { assumed, settles } }) => JSON.stringify([assumed, settles.difference]));
  return [...alike.values()].map((rows) => ({
    caption: words.ui[rows[0]?.found.assumed ? 'luck.settle.tableAssumed' : 'luck.settle.tableSeen'],
    ...tableOf(words, trial, result, rows),
  }));
}

function tableOf(words: Words, trial: Trial, result: Result, open: readonly Open[]): TextTable {
  const fewest = Math.min(...open.map(({ found }) => found.settles.units));
  const numbers = [...new Set(open.flatMap(({ found }) => found.steps.map(({ units }) => units)))]
    .filter((units) => units < fewest && open.every(({ found }) => shown(found, units) !== null))
    .toSorted((a, b) => a - b);
  const isOneTreatment = new Set(open.map(({ comparison }) => comparison.treatment)).size === 1;
  const difference = open[0]?.found.settles.difference ?? 0;
  return {
    head: [
      words.ui[isOneTreatment ? 'table.lot' : 'table.comparison'],
      ...numbers.map((units) => unitsOf(words, trial, result, open[0], units)),
      words.say('luck.settle.settled', { size: words.size(difference, result) }),
    ],
    rows: open.map((row) => [
      isOneTreatment ? words.lotName(trial, row.comparison.lot) : words.comparisonName(trial, row.comparison),
      ...numbers.map((units) => {
        const size = detectableSize((shown(row.found, units) ?? 0) - 1e-9, result.measure);
        return words.size(size, result);
      }),
      unitsOf(words, trial, result, row, row.found.settles.units),
    ]),
  };
}

/** What so many units would show. */
const shown = ({ steps }: DetectableByUnits, units: number): number | null =>
  steps.find((step) => step.units === units)?.detectable ?? null;

/** "8 trays", in the word of the trial. */
function unitsOf(words: Words, trial: Trial, result: Result, open: Open | undefined, units: number): string {
  const { control = null } = open ? groupsOf(result, open.comparison) : {};
  return control && open
    ? words.units(trial, { ...control, units, unit: open.comparison.units.kind })
    : words.number(units);
}
