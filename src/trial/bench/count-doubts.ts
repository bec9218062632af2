import type { BenchRecords, BenchSowing } from './bench.ts';
import { benchKey } from './bench-key.ts';
import { checksOfSowing } from './checks-of-sowing.ts';

/** Why a count cannot be right as it stands: the same rules by which the files are checked later. */
export type CountDoubt =
  | { readonly rule: 'falls'; readonly total: number; readonly before: number; readonly day: number }
  | { readonly rule: 'falls-later'; readonly total: number; readonly after: number; readonly day: number }
  | { readonly rule: 'exceeds'; readonly total: number; readonly seeds: number };

/** Doubts about the check of a sowing on a day: below the total of an earlier check, above that of a later one, above the seeds sown. */
export function countDoubts(records: BenchRecords, { id, seeds }: BenchSowing, day: number): CountDoubt[] {
  const total = records.checks[benchKey(id, day)]?.germinated ?? null;
  if (total === null) return [];
  const doubts: CountDoubt[] = [];
  const counted = checksOfSowing(records, id).flatMap(({ day, germinated }) =>
    germinated === null ? [] : [{ day, germinated }],
  );
  const earlier = counted.findLast((check) => check.day < day);
  const later = counted.find((check) => check.day > day);
  if (earlier && total < earlier.germinated) {
    doubts.push({ rule: 'falls', total, before: earlier.germinated, day: earlier.day });
  }
  if (later && total > later.germinated) {
    doubts.push({ rule: 'falls-later', total, after: later.germinated, day: later.day });
  }
  if (seeds !== null && total > seeds) doubts.push({ rule: 'exceeds', total, seeds });
  return doubts;
}
