import { plantsMeasured, type PlantsMeasured } from '../../plants-measured.ts';
import { number } from '../number.ts';
import type { Saying } from './saying.ts';

/**
 * "Nur was aufging, konnte gemessen werden (131 aus 150 Samen; 128 aus 150)." Where only some of them were
 * measured, how many of how many. Null unless plants were told apart.
 */
export function survivors({ trial, result, comparison }: Saying): string | null {
  if (result.measure !== 'trait') return null;
  const treatment = plantsMeasured(trial, result, comparison, comparison.treatment);
  const control = plantsMeasured(trial, result, comparison, comparison.control);
  if (!treatment || !control) return null;
  const some = [treatment, control].some(({ plants, up }) => up !== null && plants < up);
  if (some && treatment.up !== null && control.up !== null) {
    const of = ({ plants, up }: PlantsMeasured) => `${number(plants)} von ${number(up ?? 0)}`;
    return ` Nur was aufging, konnte gemessen werden, und davon wurde nur ein Teil gemessen (${of(treatment)}; ${of(control)}).`;
  }
  const from = ({ plants, seeds }: PlantsMeasured) => `${number(plants)} aus ${number(seeds)}`;
  return ` Nur was aufging, konnte gemessen werden (${from(treatment)} Samen; ${from(control)}).`;
}
