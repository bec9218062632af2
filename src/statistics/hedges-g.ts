import { mean } from 'simple-statistics';
import { noncentralTLocation } from './distributions/noncentral-t.ts';
import { variance } from './variance.ts';

/**
 * Difference of two means of units in standard deviations (pooled over the two groups), first minus
 * second, corrected for small samples: g = J d, J = 1 − 3/(4 df − 1). The limits are those of the
 * noncentral t distribution for d, not multiplied by J: the usual normal interval covers only 73 to 93 %
 * with so few units.
 *
 * @param level coverage, 0 to 1 (0.95)
 * @returns null where neither group varies
 * @throws {RangeError} with fewer than two finite values in a group, or a level outside 0 to 1
 *
 * Source: Hedges (1981), J. Educ. Stat. 6, 107–128; limits: Steiger & Fouladi (1997), from memory; methods.md 6.
 * Checked against: R `uniroot` on `pt(ncp =)`; Borenstein et al. (2009), chapter 4.
 */
export function hedgesG(
  a: readonly number[],
  b: readonly number[],
  level: number,
): { estimate: number; lower: number; upper: number } | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`hedgesG needs a level between 0 and 1, got ${level}`);
  const df = a.length + b.length - 2;
  const pooled = ((a.length - 1) * variance(a) + (b.length - 1) * variance(b)) / df;
  if (pooled === 0) return null;

  const d = (mean([...a]) - mean([...b])) / Math.sqrt(pooled);
  const unit = Math.sqrt(1 / a.length + 1 / b.length);
  const limit = (p: number) => noncentralTLocation(d / unit, df, p) * unit;
  return {
    estimate: (1 - 3 / (4 * df - 1)) * d,
    lower: limit((1 + level) / 2),
    upper: limit((1 - level) / 2),
  };
}
