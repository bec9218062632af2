import type { Comparison } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Context } from './context.ts';
import { germinatedIn } from './germinated-in.ts';
import { germinationBlocks } from './germination-blocks.ts';
import { meansBlocks } from './means-blocks.ts';
import { pooledNames } from './pooled-names.ts';
import { pooledTiming } from './pooled-timing.ts';

/**
 * Three or more lots with one unit of each treatment: the lots are the blocks (methods 3 and 4). Says
 * something about these lots together, and nothing about any one of them.
 */
export function lotsAsBlocks(pairs: readonly Pair[], context: Context): Comparison {
  const { measure } = context.outcome;
  const blocks = pairs.map(({ lot, treated, control }) => ({
    block: lot,
    treated: treated.units,
    control: control.units,
  }));
  const names = pooledNames(pairs, context);
  if (measure === 'germination') return { ...germinationBlocks(blocks, context, names), lots: names.lots };

  const timing = pooledTiming(
    pairs,
    pairs.map(() => 1),
    measure,
  );
  const units = pairs.flatMap(({ treated, control }) => [...treated.units, ...control.units]);
  const comparison = meansBlocks(blocks, timing, germinatedIn(measure, units), context, {
    ...names,
    bracket: timing.bracket,
  });
  return { ...comparison, lots: names.lots };
}
