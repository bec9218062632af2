import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/** The largest unit of a comparison holds more than three times the seeds of the smallest. */
export const unequalTrays: Rule = (trial, results) =>
  pairsOf(trial, results.filter(isAboutCounts)).flatMap(({ about, comparison, treated, control }) => {
    const seeds = [...treated.values, ...control.values].map((value) => value.seeds).filter((count) => count !== null);
    const [largest, smallest] = [Math.max(...seeds), Math.min(...seeds)];
    const names = { treatment: treated.treatment, control: control.treatment };
    const unit = comparison.units.kind;
    return largest > 3 * smallest ? [makeCaveat('unequal-trays', about, { ...names, largest, smallest, unit })] : [];
  });
