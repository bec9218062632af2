import type { Trial } from '../../trial/trial.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Pair, Side } from './pair.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { separation } from './separation.ts';
import { spanningBatches } from './spanning-batches.ts';

/**
 * There were blocks but they could not be used (methods 3): only two, some that do not hold both treatments,
 * or sowings without one. Silent where blocks keep the treatments wholly apart, which is `confounded-block`.
 */
export const incompleteBlocks: Rule = (trial, results) =>
  pairsOf(trial, results).flatMap((pair) => {
    const evidence = incompleteness(trial, pair);
    return evidence === null ? [] : [makeCaveat('incomplete-blocks', pair.about, evidence)];
  });

function incompleteness(trial: Trial, pair: Pair): Evidence['incomplete-blocks'] | null {
  const { comparison, treated, control, single } = pair;
  if (single || comparison.units.kind === 'block' || spanningBatches(trial, pair).length > 0) return null;

  const { blockOf } = lotDesign(trial, comparison.lot);
  const blocksOf = ({ sowings }: Side) => sowings.map((sowing) => ({ sowing: sowing.id, block: blockOf(sowing) }));
  const sides = { treated: blocksOf(treated), control: blocksOf(control) };
  const all = [...sides.treated, ...sides.control];
  const blocks = [...new Set(all.map(({ block }) => block))].filter((block) => block !== null).toSorted();
  const isIn = (side: typeof all, block: string) => side.some((sowing) => sowing.block === block);
  const listed = (side: typeof all) => side.map(({ block }) => (block === null ? [] : [block]));
  if (blocks.length < 2 || separation(listed(sides.treated), listed(sides.control)) !== null) return null;

  const incomplete = blocks.filter((block) => !isIn(sides.treated, block) || !isIn(sides.control, block));
  const without = all.filter(({ block }) => block === null).map(({ sowing }) => sowing);
  const names = { treatment: treated.treatment, control: control.treatment };
  if (without.length > 0) return { ...names, reason: 'some-without-block', blocks, incomplete, without };
  if (incomplete.length > 0) return { ...names, reason: 'incomplete', blocks, incomplete, without };
  return blocks.length === 2 ? { ...names, reason: 'two-blocks', blocks, incomplete, without } : null;
}
