import type { Counted } from '../../statistics/counted.ts';
import { normalQuantile } from '../../statistics/distributions/normal.ts';
import { kishTipping } from '../../statistics/kish-tipping.ts';
import { newcombeInterval } from '../../statistics/newcombe-interval.ts';
import { unitsForProportion } from '../../statistics/units-for-proportion.ts';
import type { Comparison } from '../analysis.ts';
import { total } from '../units/total.ts';
import type { Context } from './context.ts';
import { germinationEffects } from './germination-effects.ts';
import { judged } from './judged.ts';
import { makeComparison } from './make-comparison.ts';
import type { Names } from './pair-names.ts';
import { percent } from './percent.ts';

/** Dispersion and difference (percentage points) with which a repeat is planned where nothing is known. */
const PLANNED = { used: 2, difference: 10 };

/**
 * Germination where a treatment has one unit: the interval covers seed-to-seed luck only, nothing is
 * tested, and the verdict is `untestable` (methods 2). Says at which likeness of seeds within a unit the
 * interval would take in zero, and how many units would make it a trial.
 */
export function singleGermination(
  treated: readonly Counted[],
  control: readonly Counted[],
  context: Context,
  names: Names,
): Comparison {
  const [t, c] = [total(treated), total(control)];
  const behind = ({ count, seeds }: Counted) => ({ share: count / seeds, size: seeds });
  const limits = (level: number) => percent(newcombeInterval(behind(t), behind(c), normalQuantile((1 + level) / 2)));
  const interval = { level: 0.95, ...limits(0.95), method: 'newcombe-seeds-only' as const };
  const isSeedOrMore = Math.min(t.seeds, c.seeds) >= 1;
  const difference = context.outcome.matters || PLANNED.difference;
  const units = unitsForProportion(difference / 100, {
    share: (c.count + 0.5) / (c.seeds + 1),
    seeds: (t.seeds + c.seeds) / (treated.length + control.length),
    used: PLANNED.used,
  });

  return makeComparison({
    ...names,
    estimate: 100 * (t.count / t.seeds - c.count / c.seeds),
    interval,
    ...germinationEffects(t, c),
    tipping: isSeedOrMore ? kishTipping(t, c, normalQuantile(0.975)) : null,
    repeatWith: units === null ? null : { units, difference },
    ...judged({ replicated: false, units: 1, germinated: null, interval, ninety: limits(0.9) }, context),
  });
}
