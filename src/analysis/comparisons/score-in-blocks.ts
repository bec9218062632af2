import { blockDispersion, type BlockDispersion } from '../../statistics/block-dispersion.ts';
import type { Counted } from '../../statistics/counted.ts';
import { fUpper } from '../../statistics/distributions/f.ts';
import { tQuantile } from '../../statistics/distributions/t.ts';
import { newcombeInterval } from '../../statistics/newcombe-interval.ts';
import { percent } from './percent.ts';
import type { ScoreComparison } from './score-comparison.ts';

/**
 * Germination of two treatments that share blocks (methods 3): Newcombe's interval and t² on the differences within
 * blocks.
 *
 * @param blocks totals of each treatment in each block
 */
export function scoreInBlocks(
  blocks: readonly { readonly treated: Counted; readonly control: Counted }[],
): ScoreComparison & { readonly found: BlockDispersion } {
  const found = blockDispersion(blocks);
  const statistic = found.statistic ** 2;
  return {
    found,
    estimate: 100 * found.difference,
    limits: (level) =>
      percent(newcombeInterval(found.treated, found.control, tQuantile((1 + level) / 2, found.dfUsed))),
    statistic,
    p: fUpper(statistic, 1, found.dfUsed),
  };
}
