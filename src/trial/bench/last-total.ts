import type { BenchRecords } from './bench.ts';
import { checksOfSowing } from './checks-of-sowing.ts';

/** The total at the last check of a sowing before a day; null where none was made. */
export function lastTotal(records: BenchRecords, sowing: string, day: number): { total: number; day: number } | null {
  const last = checksOfSowing(records, sowing).findLast((check) => check.day < day && check.germinated !== null);
  return last === undefined || last.germinated === null ? null : { total: last.germinated, day: last.day };
}
