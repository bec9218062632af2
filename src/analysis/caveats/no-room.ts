import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/** Every unit of both treatments reached 95 % or more, so that no gain could have shown. */
export const noRoom: Rule = (trial, results) =>
  pairsOf(trial, results.filter(isGermination)).flatMap(({ about, treated, control }) => {
    const estimates = { treatment: treated.group?.estimate ?? null, control: control.group?.estimate ?? null };
    const lowest = Math.min(...[...treated.values, ...control.values].map(({ value }) => value ?? 0));
    if (estimates.treatment === null || estimates.control === null || lowest < 95) return [];
    const { treatment, control: other } = estimates;
    const names = { treatment: treated.treatment, control: control.treatment };
    return [makeCaveat('no-room', about, { ...names, lowest, estimates: { treatment, control: other } })];
  });
