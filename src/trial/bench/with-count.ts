import type { BenchCheck, BenchRecords, BenchTrial } from './bench.ts';
import { benchKey } from './bench-key.ts';
import { lastTotal } from './last-total.ts';
import { typedCount, type TypedCount } from './typed-count.ts';

export interface CountEntry {
  readonly sowing: string;
  readonly day: number;
  readonly typed: TypedCount;
  readonly scorer: string | null;
}

/**
 * The records with one count typed, changed or taken out. Totals are kept. Where only new ones are typed, the new
 * ones of later checks stay as they were typed, so that their totals move along.
 */
export function withCount(records: BenchRecords, entry: CountEntry, counts: BenchTrial['counts']): BenchRecords {
  const { sowing, day, typed, scorer } = entry;
  const key = benchKey(sowing, day);
  const { [key]: old, ...others } = records.checks;
  const before = lastTotal(records, sowing, day)?.total ?? 0;
  const total = typeof typed !== 'number' ? null : counts === 'new' ? before + typed : typed;
  const shift = counts === 'new' ? newOnes(typed) - newOnes(typedCount(records, sowing, day, 'new')) : 0;
  const moved = shift === 0 ? others : movedBy(shift, others, sowing, day);
  if (typed === null) return { ...records, checks: moved };
  const check: BenchCheck = { ...(old ?? EMPTY), sowing, day, germinated: total, scorer };
  return { ...records, checks: { ...moved, [key]: check } };
}

const EMPTY = { abnormal: null, hard: null, fresh: null, dead: null, note: null };

const newOnes = (typed: TypedCount): number => (typeof typed === 'number' ? typed : 0);

function movedBy(shift: number, checks: BenchRecords['checks'], sowing: string, day: number): BenchRecords['checks'] {
  const moved = Object.entries(checks).map(([key, check]) =>
    check.sowing === sowing && check.day > day && check.germinated !== null
      ? ([key, { ...check, germinated: check.germinated + shift }] as const)
      : ([key, check] as const),
  );
  return Object.fromEntries(moved);
}
