import type { Lot } from '../../trial/trial.ts';
import type { Comparison } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Context } from './context.ts';
import { lotsAsBlocks } from './lots-as-blocks.ts';
import { pooledGermination } from './pooled-germination.ts';
import { pooledMeans } from './pooled-means.ts';

/**
 * Comparisons pooled over lots, one a treatment and storage time (methods 4): over two or more lots in
 * which both treatments have two units or more; else, with three or more lots of exactly one unit a
 * treatment, with the lots as blocks. Only lots of one crop, unless the outcome says `pool: true`.
 *
 * @param pairs in the order in which lots, treatments and storage times are told
 */
export function pooledComparisons(
  pairs: readonly Pair[],
  lots: readonly Lot[],
  context: Context,
): readonly Comparison[] {
  const cropOf = new Map(lots.map(({ id, crop }) => [id, crop]));
  const areAlike = (some: readonly Pair[]) =>
    context.outcome.pool || new Set(some.map(({ lot }) => cropOf.get(lot))).size === 1;
  const known = pairs.filter((pair) => hasValues(pair));

  return [...Map.groupBy(known, ({ treated, stored }) => JSON.stringify([treated.treatment, stored])).values()].flatMap(
    (alike) => {
      const replicated = alike.filter((pair) => fewest(pair) >= 2);
      const single = alike.filter(({ treated, control }) => treated.units.length === 1 && control.units.length === 1);
      if (replicated.length >= 2 && areAlike(replicated)) {
        const pooled = context.outcome.measure === 'germination' ? pooledGermination : pooledMeans;
        return [pooled(replicated, context)];
      }
      return single.length >= 3 && areAlike(single) ? [lotsAsBlocks(single, context)] : [];
    },
  );
}

const fewest = ({ treated, control }: Pair): number => Math.min(treated.units.length, control.units.length);

const hasValues = ({ treated, control }: Pair): boolean =>
  [...treated.units, ...control.units].every(({ value }) => value !== null);
