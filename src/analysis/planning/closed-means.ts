import { detectableMean } from '../../statistics/detectable-mean.ts';
import { tQuantile } from '../../statistics/distributions/t.ts';
import { twoSidedPower } from '../../statistics/distributions/two-sided-power.ts';
import type { ClosedForm, UnitsBehind } from './closed-form.ts';
import type { PlanDesign } from './plan-design.ts';
import { unitSpread } from './unit-spread.ts';

/**
 * Times and traits by formula: noncentral t with ncp = d/(sd √(2/k)).
 *
 * Source: methods.md 7 and 11. Checked against: R `power.t.test(strict = TRUE)`.
 */
export function closedMeans(design: PlanDesign, { units, df }: UnitsBehind): ClosedForm {
  const sd = unitSpread(design);
  const se = sd * Math.sqrt(2 / units);
  const critical = tQuantile(0.975, df);
  return {
    power: twoSidedPower(critical, df, design.matters / se),
    detectable: detectableMean({ sd, control: units, treated: units, df }),
    halfWidth: critical * se,
  };
}
