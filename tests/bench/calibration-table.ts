import { scoreComparison } from '../../src/analysis/comparisons/score-comparison.ts';
import { drawCrop } from '../../src/analysis/planning/draw-crop.ts';
import { findGermination } from '../../src/analysis/planning/find-germination.ts';
import { planContext } from '../../src/analysis/planning/plan-context.ts';
import type { PlanDesign } from '../../src/analysis/planning/plan-design.ts';
import type { Rate } from '../../src/analysis/planning/simulated.ts';
import { countedUnits } from '../../src/analysis/units/counted-units.ts';
import { total } from '../../src/analysis/units/total.ts';
import { chiSquareUpper } from '../../src/statistics/distributions/chi-square.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { shareOf } from './share-of.ts';

/** k, true φ and germination of the table of methods 2; its figures stand in tests/analysis/planning/simulate-plan.test.ts. */
export const METHODS_TABLE = [
  [2, 4, 90],
  [3, 1, 90],
  [3, 4, 90],
  [4, 1, 50],
  [4, 2, 90],
  [4, 4, 50],
  [4, 4, 97],
  [8, 2, 90],
] as const;

/** No true difference: this method beside one that takes seeds for independent (Newcombe with z, chi-square). */
export function besideIndependentSeeds(
  design: PlanDesign,
  trials: number,
): { covers: Rate; alarms: Rate; independentCovers: Rate; independentAlarms: Rate } {
  const context = planContext(design);
  const counts = { covers: 0, alarms: 0, independentCovers: 0, independentAlarms: 0 };
  for (let trial = 0; trial < trials; trial++) {
    const pair = drawCrop(design, design.base, 'lot', seededRandom(`calibration ${trial}`));
    const { interval, p } = findGermination(pair, context);
    const [treated, control] = [pair.treated, pair.control].map(({ units }) => total(countedUnits(units) ?? []));
    if (!treated || !control) throw new Error('nothing was drawn');
    const independent = scoreComparison(treated, control, { used: 1, dfUsed: 1e9 });
    counts.covers += holdsZero(interval ?? { lower: null, upper: null });
    counts.alarms += p !== null && p <= 0.05 ? 1 : 0;
    counts.independentCovers += holdsZero(independent.limits(0.95));
    counts.independentAlarms += chiSquareUpper(independent.statistic, 1) <= 0.05 ? 1 : 0;
  }
  return {
    covers: shareOf(counts.covers, trials),
    alarms: shareOf(counts.alarms, trials),
    independentCovers: shareOf(counts.independentCovers, trials),
    independentAlarms: shareOf(counts.independentAlarms, trials),
  };
}

const holdsZero = ({ lower, upper }: { readonly lower: number | null; readonly upper: number | null }) =>
  lower !== null && upper !== null && lower <= 0 && upper >= 0 ? 1 : 0;
