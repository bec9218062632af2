import { makeCaveat } from './make-caveat.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/** One unit of a treatment, or none left: the luck of that unit cannot be told from the treatment. */
export const oneSowing: Rule = (trial, results) =>
  pairsOf(trial, results)
    .filter(({ single }) => single)
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
