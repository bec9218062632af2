import type { Sowing, Trial } from '../trial/trial.ts';
import type { Comparison, Result } from './analysis.ts';
import { outcomesOf } from './outcomes-of.ts';
import { resultOf } from './result-of.ts';

/**
 * The results of a trial, an outcome each, before caveats set their ceilings. None while it is planned or
 * growing: treatments are not compared before the last count. A storage series that goes on is given without the
 * tests that are not complete (soFar).
 *
 * @param trial its rows in one order (sortedTrial)
 */
export function resultsOf(trial: Trial): readonly Result[] {
  return outcomesOf(trial).map((outcome) => {
    const result = resultOf(trial, outcome);
    const returning = result.comparisons.length > 0 && result.leftOut.some(isReturning);
    return returning ? withLeftOut(trial, result, resultOf(trial, outcome, true)) : result;
  });
}

/** Sowings that can be taken in again: nothing was wrong with them but a mishap or a missed check. */
const isReturning = ({ reason }: Result['leftOut'][number]): boolean =>
  reason === 'deviation' || reason === 'not-checked';

/** Puts beside every comparison what it would be with the left-out sowings in. */
function withLeftOut(trial: Trial, result: Result, other: Result): Result {
  const stillOut = new Set(other.leftOut.map(({ sowing }) => sowing));
  const returning = new Set(
    result.leftOut
      .filter(isReturning)
      .map(({ sowing }) => sowing)
      .filter((sowing) => !stillOut.has(sowing)),
  );
  const comparisons = result.comparisons.map((comparison) => {
    const twin = other.comparisons.find((candidate) => nameOf(candidate) === nameOf(comparison));
    if (twin === undefined) return comparison;
    const sowings = trial.sowings.filter((sowing) => returning.has(sowing.id) && isIn(twin, sowing));
    if (sowings.length === 0) return comparison;
    const { estimate, interval, verdict } = twin;
    const range = interval && { level: interval.level, lower: interval.lower, upper: interval.upper };
    return {
      ...comparison,
      withLeftOut: { sowings: sowings.map(({ id }) => id), estimate, interval: range, verdict },
    };
  });
  return { ...result, comparisons };
}

function isIn({ lot, lots, treatment, control, stored }: Comparison, sowing: Sowing): boolean {
  const isOfLot = (lots ?? [lot]).includes(sowing.lot) && sowing.stored === stored;
  return isOfLot && (sowing.treatment === treatment || sowing.treatment === control);
}

const nameOf = ({ lot, treatment, stored }: Comparison): string => JSON.stringify([lot, treatment, stored]);
