import type { Counted } from '../../statistics/counted.ts';

/** Counts and seeds of several units added up. */
export function total(units: readonly Counted[]): Counted {
  return units.reduce((sum, unit) => ({ count: sum.count + unit.count, seeds: sum.seeds + unit.seeds }), {
    count: 0,
    seeds: 0,
  });
}
