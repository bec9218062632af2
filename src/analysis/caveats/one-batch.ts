import type { Sowing, Trial } from '../../trial/trial.ts';
import type { Caveat, Result } from '../analysis.ts';
import { lotDesign } from '../units/lot-design.ts';
import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * All sowings of a treatment were soaked, dried or stored in one go, so that the luck of that one go is in
 * all of them (methods 0). A control without a batch was not treated. Silent where there is but one unit
 * anyway, and over several lots unless all of them were treated at once. In a storage series it is one jar
 * opened at a time, which forbids comparing lines (methods 9).
 */
export const oneBatch: Rule = (trial, results) => [
  ...comparedBatches(trial, results),
  ...results.filter(({ measure }) => measure === 'storage').flatMap((result) => openedJars(trial, result)),
];

function comparedBatches(trial: Trial, results: readonly Result[]): Caveat[] {
  return layoutPairs(trial, results)
    .filter(({ single }) => !single)
    .flatMap(({ about, comparison, treated, control }) =>
      [treated.treatment, control.treatment].flatMap((treatment) => {
        const { lot, lots, stored } = comparison;
        const isOverLots = lot === 'all';
        const sowings = (isOverLots ? (lots ?? []) : [lot]).flatMap((each) =>
          lotDesign(trial, each).sowingsOf(treatment, stored),
        );
        const batch = singleBatch(trial, sowings, treatment === control.treatment);
        if (batch === null || (isOverLots && batch.because === 'one-batch-named')) return [];
        const evidence = { treatment, sowings: sowings.length, stored, ...batch };
        return [makeCaveat('one-batch', { ...about, treatment }, evidence)];
      }),
    );
}

/** The first storage time after the start at which a treatment's sowings come from one jar. */
function openedJars(trial: Trial, { outcome, groups }: Result): Caveat[] {
  const later = groups.filter(({ stored }) => stored !== null && stored > 0);
  const series = Map.groupBy(later, ({ lot, treatment }) => JSON.stringify([lot, treatment]));
  return [...series.values()].flatMap((tests) => {
    const [first] = tests
      .toSorted((a, b) => (a.stored ?? 0) - (b.stored ?? 0))
      .flatMap(({ lot, treatment, stored }) => {
        const sowings = lotDesign(trial, lot).sowingsOf(treatment, stored);
        const batch = singleBatch(trial, sowings, false);
        if (batch === null) return [];
        const evidence = { treatment, sowings: sowings.length, stored, ...batch };
        return [makeCaveat('one-batch', { outcome, lot, treatment }, evidence)];
      });
    return first === undefined ? [] : [first];
  });
}

/** The batch that all sowings share, if they do (a single sowing is one); sowings that name none, beside others that do, are one more. */
function singleBatch({ sowing }: Trial, sowings: readonly Sowing[], isControl: boolean) {
  const [batch = null, ...others] = new Set(sowings.map((each) => each.batch));
  if (batch !== null) return others.length === 0 ? ({ because: 'one-batch-named', batch } as const) : null;
  if (sowings.length === 1 && !isControl) return { because: 'one-batch-named', batch } as const;
  const isAtOnce = others.length === 0 && sowing.treated === 'at-once' && !isControl;
  return isAtOnce ? ({ because: 'treated-at-once', batch } as const) : null;
}
