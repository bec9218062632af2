import { plantsMeasured } from '../../plants-measured.ts';
import { number } from '../number.ts';
import type { Saying } from './saying.ts';

/** "Only seedlings that came up could be measured (131 from 150 seeds; 128 from 150)." Null unless plants were told apart. */
export function survivors({ trial, result, comparison }: Saying): string | null {
  if (result.measure !== 'trait') return null;
  const treatment = plantsMeasured(trial, result, comparison, comparison.treatment);
  const control = plantsMeasured(trial, result, comparison, comparison.control);
  if (!treatment || !control) return null;
  const of = ({ plants, seeds }: typeof treatment) => `${number(plants)} from ${number(seeds)}`;
  return ` Only seedlings that came up could be measured (${of(treatment)} seeds; ${of(control)}).`;
}
