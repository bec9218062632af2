import { pearsonDispersion } from '../../statistics/pearson-dispersion.ts';
import { shrunkDispersion } from '../../statistics/shrunk-dispersion.ts';
import type { Comparison } from '../analysis.ts';
import { countedUnits } from '../units/counted-units.ts';
import type { UnitGroup } from '../units/unit.ts';

/** Dispersion of the units within groups: φ and df as found, φ* and ν as used (methods 2). */
export type Dispersion = NonNullable<Comparison['dispersion']>;

/** One dispersion for all groups of a lot, or of several lots; a group whose seeds are not known says nothing. */
export function lotDispersion(groups: readonly UnitGroup[]): Dispersion {
  const { statistic, df, phi } = pearsonDispersion(groups.map(({ units }) => countedUnits(units) ?? []));
  return { phi, df, ...shrunkDispersion(statistic, df) };
}
