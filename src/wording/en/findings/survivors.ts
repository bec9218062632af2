import { plantsMeasured, type PlantsMeasured } from '../../plants-measured.ts';
import { number } from '../number.ts';
import type { Saying } from './saying.ts';

/**
 * "Only seedlings that came up could be measured (131 from 150 seeds; 128 from 150)." Where only some of them
 * were measured, how many of how many. Null unless plants were told apart.
 */
export function survivors({ trial, result, comparison }: Saying): string | null {
  if (result.measure !== 'trait') return null;
  const treatment = plantsMeasured(trial, result, comparison, comparison.treatment);
  const control = plantsMeasured(trial, result, comparison, comparison.control);
  if (!treatment || !control) return null;
  const some = [treatment, control].some(({ plants, up }) => up !== null && plants < up);
  if (some && treatment.up !== null && control.up !== null) {
    const of = ({ plants, up }: PlantsMeasured) => `${number(plants)} of ${number(up ?? 0)}`;
    return ` Only seedlings that came up could be measured, and only some of them were (${of(treatment)}; ${of(control)}).`;
  }
  const from = ({ plants, seeds }: PlantsMeasured) => `${number(plants)} from ${number(seeds)}`;
  return ` Only seedlings that came up could be measured (${from(treatment)} seeds; ${from(control)}).`;
}
