import { makeCaveat } from './make-caveat.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { spanningBatches } from './spanning-batches.ts';

/** Batches are the units and their sowings stand in several blocks, so that blocks are not used (methods 0). */
export const batchesSpanBlocks: Rule = (trial, results) =>
  pairsOf(trial, results).flatMap((pair) => {
    const batches = spanningBatches(trial, pair);
    return batches.length === 0 ? [] : [makeCaveat('batches-span-blocks', pair.about, { batches })];
  });
