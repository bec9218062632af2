import { isToldOf } from './is-told-of.ts';
import { hardlyAny } from './hardly-any.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import { noRoom } from './no-room.ts';
import { nothingCameUp } from './nothing-came-up.ts';
import type { Rule } from './rule.ts';

/**
 * A group at 5 % or below, or at 95 % or above, where a range cannot reach as far to one side as to the other.
 * Silent where `no-room`, `hardly-any` or `nothing-came-up` says so already.
 */
export const nearLimit: Rule = (trial, results) => {
  const near = results.filter(isGermination).flatMap(({ outcome, groups }) =>
    groups.flatMap(({ lot, treatment, stored, estimate, count, seeds }) => {
      if (estimate === null || count === null || seeds === null || (estimate > 5 && estimate < 95)) return [];
      const limit = estimate <= 5 ? 0 : 100;
      const evidence = { stored, estimate, limit, germinated: count, seeds } as const;
      return [makeCaveat('near-limit', { outcome, lot, treatment }, evidence)];
    }),
  );
  if (near.length === 0) return [];
  const told = [...noRoom(trial, results), ...hardlyAny(trial, results), ...nothingCameUp(trial, results)];
  return near.filter((limit) => !told.some((caveat) => isToldOf(caveat, limit)));
};
