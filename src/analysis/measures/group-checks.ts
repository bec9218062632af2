import { mergedChecks } from '../units/merged-checks.ts';
import type { UnitGroup } from '../units/unit.ts';
import type { Check as Newly } from '../../statistics/times/checks.ts';
import { newlyGerminated } from './newly-germinated.ts';

/** Seeds newly germinated in all units of a group together, on the days on which all are known. */
export function groupChecks({ units }: UnitGroup): readonly Newly[] {
  return newlyGerminated(mergedChecks(units));
}
