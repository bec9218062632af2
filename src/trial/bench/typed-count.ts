import type { BenchRecords, BenchTrial } from './bench.ts';
import { benchKey } from './bench-key.ts';
import { lastTotal } from './last-total.ts';

/** What stands in the field of a sowing: a number as it is counted (in all, or new ones only), NC, or nothing yet. */
export type TypedCount = number | 'NC' | null;

/** The check of a sowing on a day as whoever counts types it. */
export function typedCount(
  records: BenchRecords,
  sowing: string,
  day: number,
  counts: BenchTrial['counts'],
): TypedCount {
  const check = records.checks[benchKey(sowing, day)];
  if (check === undefined) return null;
  if (check.germinated === null) return 'NC';
  return counts === 'new' ? check.germinated - (lastTotal(records, sowing, day)?.total ?? 0) : check.germinated;
}
