import type { Counted } from '../statistics/counted.ts';
import { chiSquareCdf } from '../statistics/distributions/chi-square.ts';
import { pearsonDispersion } from '../statistics/pearson-dispersion.ts';

/** Pearson's X² over its degrees of freedom, and the chance of one as small or smaller. */
export interface Alikeness {
  readonly phi: number;
  readonly df: number;
  readonly p: number;
}

/**
 * Whether units of the same group are more alike than chance allows (methods 12): the left tail of X² over
 * the groups in which at least 5 seeds of every unit are expected to come up and 5 not to.
 *
 * @param groups units of each group (lot × treatment × storage time)
 * @returns null below 4 degrees of freedom, where it cannot be told
 *
 * Source: Pearson's X², whose chi-square limit wants expected counts of 5 (Cochran 1954, Biometrics 10,
 * 417–451, from memory); why too much agreement matters: sources.md 1.7. Checked against: R `pchisq`.
 */
export function moreAlikeThanChance(groups: readonly (readonly Counted[])[]): Alikeness | null {
  const { statistic, df, phi } = pearsonDispersion(groups.filter(hasEnoughOfBoth));
  return phi !== null && df >= 4 ? { phi, df, p: chiSquareCdf(statistic, df) } : null;
}

function hasEnoughOfBoth(units: readonly Counted[]): boolean {
  const count = units.reduce((sum, unit) => sum + unit.count, 0);
  const seeds = units.reduce((sum, unit) => sum + unit.seeds, 0);
  return units.every((unit) => (unit.seeds * Math.min(count, seeds - count)) / seeds >= 5);
}
