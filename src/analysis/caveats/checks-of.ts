import type { Count, Trial } from '../../trial/trial.ts';
import type { Result } from '../analysis.ts';

/** The checks of a sowing in the order of days, up to and including `until`; those not made are left out. */
export function checksOf(trial: Trial, sowing: string, until = Infinity): readonly (Count & { germinated: number })[] {
  return trial.counts
    .filter((count): count is Count & { germinated: number } => count.germinated !== null)
    .filter((count) => count.sowing === sowing && count.day <= until)
    .toSorted((a, b) => a.day - b.day);
}

/** The day on which a lot's sowings are read in an outcome; infinite where none is set. */
export const dayOf = ({ days, day }: Result, lot: string): number => days[lot] ?? day ?? Infinity;
