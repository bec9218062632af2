import type { Counted } from '../../statistics/counted.ts';
import { detectableProportion } from '../../statistics/detectable-proportion.ts';
import { signFlipTest } from '../../statistics/permutation/sign-flip-test.ts';
import { unitsToSettle } from '../../statistics/units-to-settle.ts';
import type { Comparison } from '../analysis.ts';
import { countedUnits } from '../units/counted-units.ts';
import type { PairedBlock } from '../units/paired-blocks.ts';
import { total } from '../units/total.ts';
import type { Context } from './context.ts';
import { germinationEffects } from './germination-effects.ts';
import { judged } from './judged.ts';
import { makeComparison } from './make-comparison.ts';
import type { Names } from './pair-names.ts';
import { scoreInBlocks } from './score-in-blocks.ts';

/** Blocks from which on the permutation within blocks is reported. */
const BLOCKS_TO_PERMUTE = 6;

/**
 * Germination of two treatments that share three or more blocks (methods 3); several units of a
 * treatment in one block are added first. The block is the unit.
 */
export function germinationBlocks(blocks: readonly PairedBlock[], context: Context, names: Names): Comparison {
  const added = blocks.map(({ treated, control }) => ({
    treated: total(countedUnits(treated) ?? []),
    control: total(countedUnits(control) ?? []),
  }));
  const { found, estimate, limits, statistic, p } = scoreInBlocks(added);
  const { phi, df, used, dfUsed } = found;
  const interval = { level: 0.95, ...limits(0.95), method: 'newcombe-blocks' as const };
  const [t, c] = [total(added.map((block) => block.treated)), total(added.map((block) => block.control))];
  const share = (c.count + 0.5) / (c.seeds + 1);
  const design = { share, control: found.control.size * used, treated: found.treated.size * used };
  const detectable = detectableProportion({ ...design, used, dfUsed });
  const margin = context.outcome.matters ?? 0;
  const seeds = (t.seeds + c.seeds) / (2 * blocks.length);
  const settling = margin > 0 ? blocksFor(margin / 100, share, seeds, used) : null;

  return makeComparison({
    ...names,
    units: { treatment: blocks.length, control: blocks.length, kind: 'block' },
    estimate,
    interval,
    ...germinationEffects(t, c),
    dispersion: { phi, df, used, dfUsed },
    test: { method: 'score-f-blocks', statistic, df: [1, dfUsed], p, pAdjusted: null },
    permutation: blocks.length < BLOCKS_TO_PERMUTE ? null : signFlipTest(added.map(difference)),
    detectable: detectable === null ? null : 100 * detectable,
    wouldSettle: settling === null ? null : { units: settling, difference: margin },
    ...judged(
      { replicated: true, units: blocks.length, germinated: t.count + c.count, interval, ninety: limits(0.9) },
      context,
    ),
  });
}

const difference = ({ treated, control }: { treated: Counted; control: Counted }): number =>
  treated.count / treated.seeds - control.count / control.seeds;

/** Blocks with which the difference would be shown; ν is their number. */
function blocksFor(wanted: number, share: number, seeds: number, used: number): number | null {
  return unitsToSettle(wanted, (blocks) =>
    detectableProportion({ share, control: blocks * seeds, treated: blocks * seeds, used, dfUsed: blocks }),
  );
}
