import { drawCrop } from '../../src/analysis/planning/draw-crop.ts';
import { findGermination } from '../../src/analysis/planning/find-germination.ts';
import { planContext } from '../../src/analysis/planning/plan-context.ts';
import { planDesign, type PlanDesign } from '../../src/analysis/planning/plan-design.ts';
import { normalDraw } from '../../src/statistics/draws/normal-draw.ts';
import { randomEffects } from '../../src/statistics/pooling/random-effects.ts';
import type { Study } from '../../src/statistics/pooling/study.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import type { Rate } from '../../src/analysis/planning/simulated.ts';
import { shareOf } from './share-of.ts';

const MEAN = 8;

/**
 * Several trials of one question, whose true differences vary around 8 points with sd `tau`: does the interval of the mean
 * hold 8, the prediction the truth of one more trial, and `nextResult` the result of one more trial?
 */
export function pooledQuestions(
  number: number,
  tau: number,
  questions: number,
): Readonly<Record<'mean' | 'prediction' | 'next', Rate>> {
  const design = planDesign({ measure: 'germination', base: 45, matters: MEAN, units: 4 });
  const counts = { mean: 0, prediction: 0, next: 0 };
  for (let question = 0; question < questions; question++) {
    const random = seededRandom(`question ${number} ${tau} ${question}`);
    const truths = Array.from({ length: number + 1 }, () => MEAN + tau * normalDraw(random));
    const studies = truths.map((truth) => study(design, truth, random));
    const next = studies.pop();
    const found = randomEffects(studies);
    counts.mean += holds(found.interval, MEAN);
    counts.prediction += holds(found.prediction, truths[number] ?? NaN);
    counts.next += holds(found.nextResult, next?.estimate ?? NaN);
  }
  return {
    mean: shareOf(counts.mean, questions),
    prediction: shareOf(counts.prediction, questions),
    next: shareOf(counts.next, questions),
  };
}

/** As a trial enters a pooled question: half the width of its range over 1.96 (methods 10). */
function study(design: PlanDesign, truth: number, random: () => number): Study {
  const { estimate, interval } = findGermination(
    drawCrop(design, design.base + truth, 'lot', random),
    planContext(design),
  );
  return { estimate: estimate ?? NaN, se: ((interval?.upper ?? NaN) - (interval?.lower ?? NaN)) / 2 / 1.959964 };
}

const holds = ({ lower, upper }: { readonly lower: number; readonly upper: number }, truth: number) =>
  lower <= truth && truth <= upper ? 1 : 0;
