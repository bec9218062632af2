import type { Outcome, Sowing, Trial } from '../../trial/trial.ts';
import { outcomesOf } from '../outcomes-of.ts';
import { checksUntil } from '../units/checks-until.ts';
import { deviationOf } from '../units/deviation-of.ts';
import { wantedDay } from '../units/wanted-day.ts';

/**
 * A storage series that goes on, cut down to the tests whose counts are complete: each is analysed when it is over.
 * A test is complete when each of its sowings that nothing befell has a treatment (at the start none is needed) and
 * was checked on the day of the outcome, or, where none is fixed, on the last planned count day; else once a later
 * test has begun.
 *
 * @returns null where there is nothing to analyse: no series, no test complete, or one that is counted blind while
 *   the files say which of its sowings had which treatment
 */
export function soFar(trial: Trial): Trial | null {
  const outcomes = outcomesOf(trial).filter(({ measure }) => measure === 'germination' || measure === 'storage');
  const isSeries = trial.sowings.some(({ stored }) => stored !== null && stored > 0);
  if (!isSeries || outcomes.length === 0) return null;

  const tests = [...Map.groupBy(trial.sowings, testOf).values()];
  const complete = new Set(
    tests.filter((test) => outcomes.every((outcome) => isComplete(trial, test, outcome))).flat(),
  );
  const sowings = trial.sowings.filter((sowing) => complete.has(sowing));
  const isSecret = trial.sowings.some((sowing) => !complete.has(sowing) && sowing.treatment !== null);
  const isAnyStored = sowings.some(({ stored }) => stored !== null && stored > 0);
  if (!isAnyStored || (trial.scoring.blind === 'yes' && isSecret)) return null;

  const ids = new Set(sowings.map(({ id }) => id));
  return {
    ...trial,
    sowings,
    counts: trial.counts.filter(({ sowing }) => ids.has(sowing)),
    measurements: trial.measurements.filter(({ sowing }) => ids.has(sowing)),
  };
}

const testOf = ({ lot, stored }: Sowing): string => JSON.stringify([lot, stored]);

function isComplete(trial: Trial, test: readonly Sowing[], outcome: Outcome): boolean {
  const [first] = test;
  if (first === undefined || first.stored === null) return false;
  const planned = trial.scoring.days.length > 0 ? Math.max(...trial.scoring.days) : null;
  const day = wantedDay(outcome, first.lot) ?? planned;
  const counted = new Set(trial.counts.filter(({ germinated }) => germinated !== null).map(({ sowing }) => sowing));
  const isLater = ({ lot, stored }: Sowing) => lot === first.lot && (stored ?? 0) > (first.stored ?? 0);
  const isOver = trial.sowings.some((sowing) => isLater(sowing) && counted.has(sowing.id));
  return test
    .filter(({ id }) => deviationOf(trial, id) === null)
    .every((sowing) => {
      const isNamed = sowing.treatment !== null || sowing.stored === 0;
      return isNamed && (isOver || (day !== null && isChecked(trial, sowing, day)));
    });
}

/** On the day itself, on a later one (the nearest is read then), or all its seeds were up before. */
function isChecked(trial: Trial, { id, seeds }: Sowing, day: number): boolean {
  const checks = trial.counts
    .flatMap(({ sowing, day: on, germinated }) =>
      sowing === id && germinated !== null ? [{ day: on, total: germinated }] : [],
    ) // prettier-ignore
    .toSorted((a, b) => a.day - b.day);
  return checks.some((check) => check.day >= day) || checksUntil(checks, seeds, day, false) !== null;
}
