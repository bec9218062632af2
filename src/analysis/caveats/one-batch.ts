import type { Sowing, Trial } from '../../trial/trial.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Pair } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * All sowings of a treatment were soaked, dried or stored in one go, so that the luck of that one go is in
 * all of them (methods 0). A control without a batch was not treated. Silent where there is but one unit
 * anyway, and over several lots unless all of them were treated at once.
 */
export const oneBatch: Rule = (trial, results) =>
  layoutPairs(trial, results)
    .filter(({ single }) => !single)
    .flatMap((pair) =>
      [pair.treated.treatment, pair.control.treatment].flatMap((treatment) => {
        const evidence = singleBatch(trial, pair, treatment);
        return evidence === null ? [] : [makeCaveat('one-batch', { ...pair.about, treatment }, evidence)];
      }),
    );

function singleBatch(trial: Trial, { comparison, control }: Pair, treatment: string): Evidence['one-batch'] | null {
  const { lot, lots, stored } = comparison;
  const sowings = (lot === 'all' ? (lots ?? []) : [lot]).flatMap((each) =>
    lotDesign(trial, each).sowingsOf(treatment, stored),
  );
  const batches = batchesOf(sowings);
  const common = { treatment, sowings: sowings.length, stored };
  if (batches.length > 0) {
    const isOne = batches.length === 1 && lot !== 'all';
    return isOne ? { ...common, because: 'one-batch-named', batch: batches[0] ?? null } : null;
  }
  const atOnce = trial.sowing.treated === 'at-once' && treatment !== control.treatment;
  return atOnce ? { ...common, because: 'treated-at-once', batch: null } : null;
}

/** Batches of a treatment; where some sowings name one, those that name none are together one more. */
function batchesOf(sowings: readonly Sowing[]): readonly (string | null)[] {
  const batches = [...new Set(sowings.map(({ batch }) => batch))];
  return batches.every((batch) => batch === null) ? [] : batches;
}
