import type { Evidence } from '../analysis/caveats/evidence.ts';

/** Whether more was sown than the one unit that is left, so that "there was only one" would be untrue. */
export const wereMore = ({ unit, units, sown }: Evidence['one-sowing']): boolean =>
  unit === 'sowing' && (['treatment', 'control'] as const).some((side) => units[side] < 2 && sown[side] > units[side]);
