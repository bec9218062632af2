import type { Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';

/** The sowings of either side of a comparison that did not enter its outcome, with the reason. */
export function leftOutOf(
  trial: Trial,
  result: Result,
  { lot, lots, stored, treatment, control }: Comparison,
): Result['leftOut'] {
  const within = lots ?? [lot];
  return result.leftOut.filter(({ sowing: id }) => {
    const sowing = trial.sowings.find((each) => each.id === id);
    return (
      sowing !== undefined &&
      within.includes(sowing.lot) &&
      sowing.stored === stored &&
      (sowing.treatment === treatment || sowing.treatment === control)
    );
  });
}
