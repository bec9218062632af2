import { canonicalJson } from '../trial/canonical-json.ts';
import type { Lot } from '../trial/trial.ts';
import type { Published } from './front-page.ts';

/** A lot that some published trial used: lots that nobody has sown yet are the group's own affair. */
export interface UsedLot {
  readonly id: string;
  /** What trials say about it: one passport, or several where trials brought the same id for different seed. */
  readonly passports: readonly { readonly lot: Lot; readonly trials: readonly Published[] }[];
  readonly trials: readonly Published[];
}

/** Every lot used, by id; trials in the order given. */
export function lotsUsed(published: readonly Published[]): readonly UsedLot[] {
  const uses = published.flatMap((entry) => entry.trial.lots.map((lot) => ({ lot, entry })));
  const byId = [...Map.groupBy(uses, ({ lot }) => lot.id)].sort(([a], [b]) => (a < b ? -1 : 1));
  return byId.map(([id, of]) => ({
    id,
    passports: [...Map.groupBy(of, ({ lot }) => canonicalJson(lot)).values()].map((same) => ({
      lot: (same[0] as (typeof same)[number]).lot,
      trials: same.map(({ entry }) => entry),
    })),
    trials: of.map(({ entry }) => entry),
  }));
}
