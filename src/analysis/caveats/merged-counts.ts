import type { Sowing, Trial } from '../../trial/trial.ts';
import { mergedChecks } from '../units/merged-checks.ts';
import type { Check } from '../units/unit.ts';
import { checksOf } from './checks-of.ts';

/** Counts of several sowings added up, on the days up to `until` on which all of them are known. */
export function mergedCounts(trial: Trial, sowings: readonly Sowing[], until = Infinity): readonly Check[] {
  return mergedChecks(
    sowings.map(({ id, seeds }) => ({
      seeds,
      checks: checksOf(trial, id, until).map(({ day, germinated }) => ({ day, total: germinated })),
    })),
  );
}
