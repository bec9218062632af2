import { normalQuantile } from '../../statistics/distributions/normal.ts';
import { tQuantile } from '../../statistics/distributions/t.ts';
import { wilsonInterval } from '../../statistics/wilson-interval.ts';
import type { Group } from '../analysis.ts';
import type { Dispersion } from '../comparisons/lot-dispersion.ts';
import { percent } from '../comparisons/percent.ts';
import { countedUnits } from '../units/counted-units.ts';
import { total } from '../units/total.ts';
import type { UnitGroup } from '../units/unit.ts';
import { groupNames } from './group-names.ts';

/**
 * Germination of one group, in % of seeds sown (methods 1). One unit: the interval is Wilson's own and
 * covers seed-to-seed luck only. Where seeds sown are not known the count is given, and no percentage.
 *
 * @param dispersion of the lot, that carries the luck of its units into the interval
 */
export function germinationGroup(group: UnitGroup, { used, dfUsed }: Dispersion): Group {
  const names = groupNames(group);
  const units = countedUnits(group.units);
  if (units === null || units.length === 0) {
    const count = group.units.length === 0 ? null : group.units.reduce((sum, unit) => sum + (unit.count ?? 0), 0);
    return { ...names, count };
  }
  const { count, seeds } = total(units);
  const single = units.length === 1;
  const size = single ? seeds : seeds / used;
  const quantile = single ? normalQuantile(0.975) : tQuantile(0.975, dfUsed);
  const limits = percent(wilsonInterval(count / seeds, size, quantile));
  return {
    ...names,
    seeds,
    count,
    estimate: (100 * count) / seeds,
    interval: { level: 0.95, ...limits, method: single ? 'wilson-seeds-only' : 'wilson-effective' },
  };
}
