import { makeCaveat } from './make-caveat.ts';
import type { Side } from './pair.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * One unit of a treatment, or none left: the luck of that unit cannot be told from the treatment. Silent where a
 * time is missing only because nothing came up in several sowings, which `hardly-any` or `nothing-came-up` says.
 */
export const oneSowing: Rule = (trial, results) =>
  pairsOf(trial, results)
    .filter(({ single, treated, control }) => single && ![treated, control].every(hasSeveral))
    .map(({ about, comparison, treated, control }) => {
      const sown = (treatment: string) =>
        trial.sowings.filter(
          (sowing) =>
            sowing.lot === comparison.lot && sowing.treatment === treatment && sowing.stored === comparison.stored,
        ).length;
      return makeCaveat('one-sowing', about, {
        treatment: treated.treatment,
        control: control.treatment,
        unit: comparison.units.kind,
        units: { treatment: comparison.units.treatment, control: comparison.units.control },
        sown: { treatment: sown(treated.treatment), control: sown(control.treatment) },
      });
    });

const hasSeveral = ({ values, leftOut }: Side): boolean =>
  values.length > 1 ||
  (values.length === 0 && leftOut.length > 1 && leftOut.every(({ reason }) => reason === 'nothing-germinated'));
