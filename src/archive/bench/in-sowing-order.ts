import type { BenchTrial } from '../../trial/bench/bench.ts';

/** Compares rows by day, then by the order of the bench, then by plant (2 before 10). */
export function inSowingOrder({ sowings }: BenchTrial) {
  const place = new Map(sowings.map(({ id }, index) => [id, index]));
  type Row = { readonly sowing: string; readonly day: number; readonly plant?: string | null };
  return (a: Row, b: Row): number =>
    a.day - b.day ||
    (place.get(a.sowing) ?? Infinity) - (place.get(b.sowing) ?? Infinity) ||
    byNumber.compare(a.plant ?? '', b.plant ?? '');
}

const byNumber = new Intl.Collator('en', { numeric: true });
