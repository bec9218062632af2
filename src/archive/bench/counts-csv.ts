import type { BenchSession } from '../../trial/bench/bench.ts';
import { lastTotal } from '../../trial/bench/last-total.ts';
import { csvText } from '../csv-text.ts';
import { inSowingOrder } from './in-sowing-order.ts';
import { whenCells, whenColumns } from './when-columns.ts';

const SORTS = ['abnormal', 'hard', 'fresh', 'dead'] as const;

/**
 * counts.csv of what was recorded: a row a check, by day and in the order of the bench, NC where it was not checked,
 * totals or new ones as the trial keeps them. Columns that nothing stands in are left out. Null: nothing was counted.
 *
 * Checked against: the project's own reader, which gives back the same records.
 */
export function countsCsv({ trial, records }: BenchSession): string | null {
  const checks = Object.values(records.checks).sort(inSowingOrder(trial));
  if (checks.length === 0) return null;
  const sorts = SORTS.filter((sort) => checks.some((check) => check[sort] !== null));
  const texts = (['scorer', 'note'] as const).filter((text) => checks.some((check) => check[text] !== null));
  const when = whenColumns(trial);
  return csvText(
    {
      head: ['sowing', ...when, 'germinated', ...sorts, ...texts],
      rows: checks.map((check) => {
        const before = trial.counts === 'new' ? (lastTotal(records, check.sowing, check.day)?.total ?? 0) : 0;
        return [
          check.sowing,
          ...whenCells(trial, check.sowing, check.day),
          check.germinated === null ? 'NC' : check.germinated - before,
          ...sorts.map((sort) => check[sort]),
          ...texts.map((text) => check[text]),
        ];
      }),
    },
    false,
    ['sowing'],
  );
}
