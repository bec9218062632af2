import { binomialDraw } from '../../statistics/draws/binomial-draw.ts';
import { normalDraw } from '../../statistics/draws/normal-draw.ts';
import { normalCdf } from '../../statistics/distributions/normal.ts';
import { timeToShare } from '../../statistics/times/time-to-share.ts';
import { newlyGerminated } from '../measures/newly-germinated.ts';
import type { Unit } from '../units/unit.ts';
import type { PlanDesign, PlanTiming } from './plan-design.ts';

/**
 * One tray whose seeds come up around `median` days, as the checks see it: counted at every check until the last of
 * the seeds could have come up in either treatment.
 */
export function drawTimes(
  { base, matters, seeds, spread }: PlanDesign,
  { every, seedSpread, germination }: PlanTiming,
  median: number,
  random: () => number,
): Pick<Unit, 'seeds' | 'count' | 'checks' | 'value'> {
  const last = base + matters + 4 * Math.hypot(spread, seedSpread);
  const own = median + spread * normalDraw(random);
  let left = binomialDraw(seeds, germination / 100, random);
  let before = 0;
  const newly = Array.from({ length: Math.ceil(last / every) }, (_, index) => {
    // Of the seeds that are not up yet, so many come up in this gap.
    const by = normalCdf(((index + 1) * every - own) / seedSpread);
    const number = binomialDraw(left, before < 1 ? Math.min(1, (by - before) / (1 - before)) : 1, random);
    before = by;
    left -= number;
    return number;
  });
  let total = 0;
  const checks = newly.map((number, index) => ({ day: (index + 1) * every, total: (total += number) }));
  return { seeds, count: total, checks, value: timeToShare(newlyGerminated(checks), 0.5) };
}
