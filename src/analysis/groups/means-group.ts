import { mean } from 'simple-statistics';
import { tQuantile } from '../../statistics/distributions/t.ts';
import { variance } from '../../statistics/variance.ts';
import type { Measure } from '../../trial/trial.ts';
import type { Group } from '../analysis.ts';
import { plantsOf } from '../measures/plants-of.ts';
import { groupChecks } from '../measures/group-checks.ts';
import { isTime } from '../measures/is-time.ts';
import { timeBracket } from '../measures/time-bracket.ts';
import type { UnitGroup } from '../units/unit.ts';
import { groupNames } from './group-names.ts';
import { plantSpread } from './plant-spread.ts';

/**
 * Mean of the units of one group, with their sd and Student's interval of the mean (Welch's for a single
 * group: t on k − 1); both need two units that differ. Times carry what the checks allow. A time
 * that one of the units does not have leaves the mean unknown.
 */
export function meansGroup(group: UnitGroup, measure: Measure): Group {
  const { units } = group;
  const values = units.map(({ value }) => value).filter((value) => value !== null);
  const isKnown = values.length > 0 && values.length === units.length;
  const estimate = isKnown ? mean(values) : null;
  const sd = isKnown && values.length > 1 ? Math.sqrt(variance(values)) : null;
  const plants = units.map((unit) => plantsOf(measure, unit)).filter((number) => number !== null);

  return {
    ...groupNames(group),
    estimate,
    sd,
    interval: estimate !== null && sd ? intervalOf(estimate, sd, values.length) : null,
    bracket: isTime(measure) ? timeBracket(measure, groupChecks(group)) : null,
    plants: plants.length === 0 ? null : plants.reduce((sum, number) => sum + number, 0),
    ...plantSpread(units),
  };
}

function intervalOf(estimate: number, sd: number, units: number): Group['interval'] {
  const reach = (tQuantile(0.975, units - 1) * sd) / Math.sqrt(units);
  return { level: 0.95, lower: estimate - reach, upper: estimate + reach, method: 'welch' };
}
