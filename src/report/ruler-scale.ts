import type { Comparison } from '../analysis/analysis.ts';

/** A ruler on which several intervals lie to the same scale. */
export interface RulerScale {
  readonly ticks: readonly number[];
  /** Place of a value, % of the ruler's width. */
  at(value: number): number;
}

const EDGE = 8; // % left free at either end, so that the last label is not cut

/**
 * One ruler for all comparisons of an outcome: takes in zero, every difference, every interval and the
 * margin on both sides, and ends on a tick. Null where nothing can be drawn.
 *
 * Ticks stand at 1, 2 or 5 times a power of ten, at most eight of them.
 */
export function rulerScale(comparisons: readonly Comparison[]): RulerScale | null {
  const values = comparisons
    .flatMap((c) => [c.estimate, c.interval?.lower, c.interval?.upper])
    .filter((value) => value !== null && value !== undefined);
  if (values.length === 0) return null;
  const margins = comparisons.flatMap((c) => (c.equivalence ? [c.equivalence.margin, -c.equivalence.margin] : []));
  const lowest = Math.min(0, ...values, ...margins);
  const highest = Math.max(0, ...values, ...margins);

  const step = tickStep(highest - lowest || 1);
  const first = Math.floor(lowest / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(highest / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  const [start = 0, end = 1] = [first * step, last * step];
  return { ticks, at: (value) => EDGE + ((100 - 2 * EDGE) * (value - start)) / (end - start) };
}

function tickStep(width: number): number {
  const power = 10 ** Math.floor(Math.log10(width / 6));
  return [1, 2, 5, 10].map((factor) => factor * power).find((step) => width / step <= 6) ?? 10 * power;
}
