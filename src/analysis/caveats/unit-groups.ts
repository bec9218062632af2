import type { Result, UnitValue } from '../analysis.ts';

/** Units of one treatment at one storage time. */
export interface UnitsOfGroup {
  readonly treatment: string;
  readonly stored: number | null;
  readonly values: readonly UnitValue[];
}

/** The units of a lot by treatment and storage time, in the order of the result's groups. */
export function unitGroups({ groups, values }: Result, lot: string): readonly UnitsOfGroup[] {
  return groups
    .filter((group) => group.lot === lot)
    .map(({ treatment, stored }) => ({
      treatment,
      stored,
      values: values.filter((value) => value.lot === lot && value.treatment === treatment && value.stored === stored),
    }));
}
