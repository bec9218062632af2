import type { Facts } from '../../finding.ts';
import { number } from '../number.ts';

/** "264 of 300 seeds and 186 of 300; "; nothing where 100 seeds were sown of each, or where a count is missing. */
export function rawCounts({ groups: { treatment, control } }: Facts): string {
  if (treatment?.count == null || control?.count == null) return '';
  if (treatment.seeds === null || control.seeds === null) return '';
  if (treatment.seeds === 100 && control.seeds === 100) return '';
  return `${number(treatment.count)} of ${number(treatment.seeds)} seeds and ${number(control.count)} of ${number(control.seeds)}; `;
}
