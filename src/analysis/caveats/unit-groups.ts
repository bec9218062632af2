import type { Result, UnitValue } from '../analysis.ts';

/** Units of one treatment at one storage time. */
export interface UnitsOfGroup {
  readonly treatment: string;
  readonly stored: number | null;
  readonly values: readonly UnitValue[];
}

/**
 * The units of a lot by treatment and storage time, in the order of the result's groups. Sowings at the start of
 * a storage series belong to every treatment; they are listed with the first.
 */
export function unitGroups({ groups, values }: Result, lot: string): readonly UnitsOfGroup[] {
  const all = groups
    .filter((group) => group.lot === lot)
    .map(({ treatment, stored }) => ({
      treatment,
      stored,
      values: values.filter((value) => value.lot === lot && value.treatment === treatment && value.stored === stored),
    }));
  const keys = all.map((group) => JSON.stringify(group.values.map(({ sowings }) => sowings)));
  return all.filter((group, index) => {
    const isFirst = keys.indexOf(keys[index] ?? '') === index;
    return isFirst || group.values.every(({ sowings }) => sowings.length === 0);
  });
}
