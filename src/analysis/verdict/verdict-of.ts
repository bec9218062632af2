import type { Range, Verdict } from '../analysis.ts';

/** What a verdict rests on. Limits and margin are in the unit of the outcome. */
export interface Evidence {
  /** Two units or more in each treatment. */
  readonly replicated: boolean;
  /** Units of the treatment that has fewer. */
  readonly units: number;
  /** Seeds germinated in both treatments together; null where the outcome is not about germination. */
  readonly germinated: number | null;
  readonly margin: number | null;
  readonly marginFixed: boolean;
  /** At 95 % and at 90 %; null where none can be computed. */
  readonly interval: Range | null;
  readonly ninety: Range | null;
  /** At 95 %, for `different` only: Welch's own interval where checks were coarse (methods 5), save for spreads. */
  readonly own: Range | null;
  /** Mean times and spreads from coarse checks are never `same` (methods 5). */
  readonly neverSame: boolean;
}

const HARDLY_ANY = 5;
const UNITS_FOR_SAME = 3;

/**
 * The verdict of a comparison, in the order of methods 7. `shown`: the 90 % interval lies within the
 * margin (two one-sided tests, Schuirmann 1987); `same` needs more: three units of each, a margin
 * fixed before the first count, and for mean times and spreads checks that were not coarse.
 */
export function verdictOf(evidence: Evidence): { readonly verdict: Verdict; readonly shown: boolean } {
  const { replicated, units, germinated, margin, marginFixed, interval, ninety, own, neverSame } = evidence;
  if (!replicated) return { verdict: 'untestable', shown: false };
  if (germinated !== null && germinated < HARDLY_ANY) return { verdict: 'unclear', shown: false };

  const shown = margin !== null && ninety !== null && lowest(ninety) >= -margin && highest(ninety) <= margin;
  if (shown && marginFixed && units >= UNITS_FOR_SAME && !neverSame) return { verdict: 'same', shown };
  if (margin !== null && interval !== null && isBeyond(interval, margin)) return { verdict: 'matters', shown };
  if (own !== null && isBeyond(own, 0)) return { verdict: 'different', shown };
  return { verdict: 'unclear', shown };
}

const lowest = ({ lower }: Range): number => lower ?? -Infinity;
const highest = ({ upper }: Range): number => upper ?? Infinity;

/** Entirely above `margin` or entirely below its negative. */
const isBeyond = (range: Range, margin: number): boolean => lowest(range) > margin || highest(range) < -margin;
