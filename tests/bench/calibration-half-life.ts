import { drawCrop } from '../../src/analysis/planning/draw-crop.ts';
import { planDesign } from '../../src/analysis/planning/plan-design.ts';
import type { Rate } from '../../src/analysis/planning/simulated.ts';
import { survivalLine } from '../../src/analysis/storage/survival-line.ts';
import { normalCdf } from '../../src/statistics/distributions/normal.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { shareOf } from './share-of.ts';

const YEARS = [0, 1, 2, 4, 6];

/**
 * Storage series that fall by a probit in two years from 95 of 100 on: how often is a half-life given, and how often, where
 * it is, do its Fieller limits hold the true one?
 *
 * @param jars at each time, of 50 seeds, which vary by φ
 */
export function halfLives(jars: number, spread: number, series: number): { given: Rate; covered: Rate } {
  const [ki, sigma] = [1.645, 2];
  let [given, covered] = [0, 0];
  for (let number = 0; number < series; number++) {
    const random = seededRandom(`series ${jars} ${spread} ${number}`);
    const groups = YEARS.map((stored) => {
      const base = 100 * normalCdf(ki - stored / sigma);
      const design = planDesign({ measure: 'germination', base, matters: 1, units: jars, spread });
      return { ...drawCrop(design, base, 'lot', random).control, stored };
    });
    const { halfLife } = survivalLine(groups);
    if (halfLife === null) continue;
    given++;
    if ((halfLife.lower ?? -Infinity) <= ki * sigma && ki * sigma <= (halfLife.upper ?? Infinity)) covered++;
  }
  return { given: shareOf(given, series), covered: shareOf(covered, given) };
}
