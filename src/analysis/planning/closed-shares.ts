import { detectableProportion } from '../../statistics/detectable-proportion.ts';
import { tCdf, tQuantile } from '../../statistics/distributions/t.ts';
import { shrunkDispersion } from '../../statistics/shrunk-dispersion.ts';
import type { ClosedForm, UnitsBehind } from './closed-form.ts';
import type { PlanDesign } from './plan-design.ts';
import { treatedValue } from './treated-value.ts';

/**
 * Germination by formula: se = √(φ*(p₀q₀ + p₁q₁)/N), φ* as it comes out on average with this φ, power P(T ≤ d/se − t),
 * all on ν.
 *
 * Source: methods.md 7 and 11 (the equation of the detectable difference, solved for power).
 * Checked against: detectableProportion (power 0.8 at its own answer); R `power.prop.test` with many units.
 */
export function closedShares(design: PlanDesign, { units, df }: UnitsBehind): ClosedForm {
  const { used, dfUsed } = shrunkDispersion(df * design.spread, df);
  const [p0, p1] = [design.base / 100, (treatedValue(design) ?? NaN) / 100];
  const seeds = units * design.seeds;
  const se = Math.sqrt((used * (p0 * (1 - p0) + p1 * (1 - p1))) / seeds);
  const critical = tQuantile(0.975, dfUsed);
  const detectable = detectableProportion({ share: p0, control: seeds, treated: seeds, used, dfUsed });
  return {
    power: tCdf(Math.abs(p1 - p0) / se - critical, dfUsed),
    detectable: detectable === null ? null : 100 * detectable,
    halfWidth: 100 * critical * se,
  };
}
