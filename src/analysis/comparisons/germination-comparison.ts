import type { Counted } from '../../statistics/counted.ts';
import { detectableProportion } from '../../statistics/detectable-proportion.ts';
import { permuteProportions } from '../../statistics/permutation/permute-proportions.ts';
import { unitsForProportion } from '../../statistics/units-for-proportion.ts';
import type { Comparison } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import { pairedBlocks } from '../units/paired-blocks.ts';
import { total } from '../units/total.ts';
import { countedUnits } from '../units/counted-units.ts';
import type { Context } from './context.ts';
import { germinationBlocks } from './germination-blocks.ts';
import { germinationEffects } from './germination-effects.ts';
import { inOneOrder } from './in-one-order.ts';
import { judged } from './judged.ts';
import { lotDispersion } from './lot-dispersion.ts';
import { makeComparison } from './make-comparison.ts';
import { pairNames } from './pair-names.ts';
import { scoreComparison } from './score-comparison.ts';
import { singleGermination } from './single-germination.ts';

/**
 * Germination of two treatments in one lot (methods 2, and 3 where there are blocks). Differences are
 * treatment minus control, in percentage points.
 *
 * @returns null where seeds sown are not known: then counts are shown and nothing is compared
 */
export function germinationComparison(pair: Pair, context: Context): Comparison | null {
  const treated = countedUnits(pair.treated.units);
  const control = countedUnits(pair.control.units);
  if (treated === null || control === null) return null;

  const names = pairNames(pair, context);
  if (treated.length === 0 || control.length === 0) {
    return makeComparison({
      ...names,
      ...judged({ replicated: false, units: 0, germinated: null, interval: null, ninety: null }, context),
    });
  }
  const blocks = pairedBlocks(pair.treated, pair.control);
  if (blocks !== null) return germinationBlocks(blocks, context, names);
  if (treated.length === 1 || control.length === 1) return singleGermination(treated, control, context, names);
  return replicated(pair, treated, control, context);
}

function replicated(
  pair: Pair,
  treated: readonly Counted[],
  control: readonly Counted[],
  context: Context,
): Comparison {
  const dispersion = lotDispersion([pair.treated, pair.control, ...pair.others]);
  const { used, dfUsed } = dispersion;
  const [t, c] = [total(treated), total(control)];
  const { estimate, limits, statistic, p } = scoreComparison(t, c, dispersion);
  const share = (c.count + 0.5) / (c.seeds + 1);
  const detectable = detectableProportion({ share, control: c.seeds, treated: t.seeds, used, dfUsed });
  const margin = context.outcome.matters ?? 0;
  const seeds = (t.seeds + c.seeds) / (treated.length + control.length);
  const settling = margin > 0 ? unitsForProportion(margin / 100, { share, seeds, used }) : null;
  const interval = { level: 0.95, ...limits(0.95), method: 'newcombe-effective' as const };

  return makeComparison({
    ...pairNames(pair, context),
    estimate,
    interval,
    ...germinationEffects(t, c),
    dispersion,
    test: { method: 'score-f', statistic, df: [1, dfUsed], p, pAdjusted: null },
    permutation: permuteProportions(...inOneOrder(treated, control)),
    detectable: detectable === null ? null : 100 * detectable,
    wouldSettle: settling === null ? null : { units: settling, difference: margin },
    ...judged(
      {
        replicated: true,
        units: Math.min(treated.length, control.length),
        germinated: t.count + c.count,
        interval,
        ninety: limits(0.9),
      },
      context,
    ),
  });
}
