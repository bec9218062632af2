import type { Count, Trial } from '../../trial/trial.ts';
import type { Result } from '../analysis.ts';

type Check = Count & { germinated: number };

/** Checks by sowing, sorted once for each trial, which never changes. */
const sorted = new WeakMap<Trial, Map<string, readonly Check[]>>();

/** The checks of a sowing in the order of days, up to and including `until`; those not made are left out. */
export function checksOf(trial: Trial, sowing: string, until = Infinity): readonly Check[] {
  const bySowing = sorted.get(trial) ?? checksBySowing(trial);
  sorted.set(trial, bySowing);
  return (bySowing.get(sowing) ?? []).filter(({ day }) => day <= until);
}

function checksBySowing({ counts }: Trial): Map<string, readonly Check[]> {
  const made = counts.filter((count): count is Check => count.germinated !== null);
  return Map.groupBy(
    made.toSorted((a, b) => a.day - b.day),
    ({ sowing }) => sowing,
  );
}

/** The day on which a lot's sowings are read in an outcome; infinite where none is set. */
export const dayOf = ({ days, day }: Result, lot: string): number => days[lot] ?? day ?? Infinity;
