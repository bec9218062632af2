import type { Trial } from '../trial/trial.ts';
import { CONTROL_STYLE, seriesStyle, type TreatmentStyle } from './series-style.ts';

/**
 * How one treatment is drawn in every chart of its trial: colour, dash and shape say the same, so that grey print
 * and colour-blind eyes lose nothing. The control is ink, a whole line and an open circle; the others follow in the
 * order of trial.yaml. The first five have a colour, a dash and a shape of their own; beyond, combinations differ
 * (up to 125 of them) and charts write every label beside its mark.
 *
 * @throws {RangeError} when the trial has no such treatment
 */
export function treatmentStyle(trial: Trial, treatment: string): TreatmentStyle {
  const found = trial.treatments.find(({ id }) => id === treatment);
  if (!found) throw new RangeError(`treatmentStyle needs a treatment of ${trial.id}, got ${treatment}`);
  if (found.control) return CONTROL_STYLE;

  return seriesStyle(trial.treatments.filter(({ control }) => !control).indexOf(found));
}
