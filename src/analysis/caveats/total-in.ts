import type { UnitValue } from '../analysis.ts';

/** Seeds sown, or seeds that came up, in some units; units where it is not known add nothing. */
export function totalIn(values: readonly UnitValue[], what: 'seeds' | 'germinated'): number {
  return values.reduce(
    (sum, { seeds, count, plants }) => sum + ((what === 'seeds' ? seeds : (count ?? plants)) ?? 0),
    0,
  );
}
