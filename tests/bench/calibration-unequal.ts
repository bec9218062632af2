import { limitsOf } from '../../src/analysis/comparisons/limits-of.ts';
import type { Rate } from '../../src/analysis/planning/simulated.ts';
import { normalDraw } from '../../src/statistics/draws/normal-draw.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { welchT } from '../../src/statistics/welch-t.ts';
import { shareOf } from './share-of.ts';

/** Welch's interval and test where the trays of one treatment vary three times as much; no true difference. */
export function unequalSpreads(treated: number, control: number, trials: number): { covers: Rate; alarms: Rate } {
  const counts = { covers: 0, alarms: 0 };
  for (let trial = 0; trial < trials; trial++) {
    const random = seededRandom(`unequal ${treated} ${control} ${trial}`);
    const draw = (units: number, sd: number) => Array.from({ length: units }, () => sd * normalDraw(random));
    const test = welchT(draw(treated, 3), draw(control, 1));
    if (test === null) throw new Error('trays that do not vary');
    const { lower, upper } = limitsOf(test, 0.95);
    counts.covers += lower <= 0 && upper >= 0 ? 1 : 0;
    counts.alarms += test.p <= 0.05 ? 1 : 0;
  }
  return { covers: shareOf(counts.covers, trials), alarms: shareOf(counts.alarms, trials) };
}
