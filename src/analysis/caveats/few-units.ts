import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/** Two or three units of a treatment: enough to be tested, not to be sure of. */
export const fewUnits: Rule = (trial, results) =>
  layoutPairs(trial, results).flatMap(({ about, comparison, single, treated, control }) => {
    const { kind: unit, ...units } = comparison.units;
    const names = { treatment: treated.treatment, control: control.treatment };
    const isFew = !single && Math.min(units.treatment, units.control) <= 3;
    return isFew ? [makeCaveat('few-units', about, { ...names, unit, units })] : [];
  });
