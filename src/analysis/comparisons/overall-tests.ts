import { oneWayF } from '../../statistics/one-way-f.ts';
import type { Result } from '../analysis.ts';
import type { UnitGroup } from '../units/unit.ts';

/**
 * Do the treatments of a lot differ at all? One-way F over the means of units, where a lot has more than
 * two treatments (methods 6). None where a unit has no value, where nothing varies, or in a storage series.
 *
 * @param groups of one lot
 */
export function overallTests(groups: readonly UnitGroup[]): Result['overall'] {
  const times = new Set(groups.map(({ stored }) => stored));
  if (groups.length < 3 || times.size > 1) return [];
  const values = groups.map(({ units }) => units.map(({ value }) => value).filter((value) => value !== null));
  const isComplete = values.every((own, index) => own.length > 0 && own.length === groups[index]?.units.length);
  const test = isComplete ? oneWayF(values) : null;
  return test === null ? [] : [{ lot: groups[0]?.lot ?? '', ...test }];
}
