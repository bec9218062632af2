import type { Count, Trial } from '../../trial/trial.ts';
import type { Result } from '../analysis.ts';
import { onceATrial } from '../once-a-trial.ts';

type Check = Count & { germinated: number };

/** The checks of a sowing in the order of days, up to and including `until`; those not made are left out. */
export function checksOf(trial: Trial, sowing: string, until = Infinity): readonly Check[] {
  const checks = checksBySowing(trial).get(sowing) ?? [];
  return (checks.at(-1)?.day ?? 0) <= until ? checks : checks.filter(({ day }) => day <= until);
}

const checksBySowing = onceATrial(({ counts }): Map<string, readonly Check[]> => {
  const made = counts.filter((count): count is Check => count.germinated !== null);
  const bySowing = Map.groupBy(made, ({ sowing }) => sowing);
  for (const checks of bySowing.values()) checks.sort((a, b) => a.day - b.day);
  return bySowing;
});

/** The day on which a lot's sowings are read in an outcome; infinite where none is set. */
export const dayOf = ({ days, day }: Result, lot: string): number => days[lot] ?? day ?? Infinity;
