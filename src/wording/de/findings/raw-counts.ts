import type { Facts } from '../../finding.ts';
import { number } from '../number.ts';

/** "264 von 300 Samen und 186 von 300; "; nothing where 100 seeds were sown of each, or where a count is missing. */
export function rawCounts({ groups: { treatment, control } }: Facts): string {
  if (treatment?.count == null || control?.count == null) return '';
  if (treatment.seeds === null || control.seeds === null) return '';
  if (treatment.seeds === 100 && control.seeds === 100) return '';
  return `${number(treatment.count)} von ${number(treatment.seeds)} Samen und ${number(control.count)} von ${number(control.seeds)}; `;
}
