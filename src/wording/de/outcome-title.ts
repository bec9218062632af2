import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { measureName } from './measure-name.ts';
import { number } from './number.ts';
import { traitName } from './trait-name.ts';

/** "Aufgegangen bis Tag 14", "Tag, bis zu dem die Hälfte aufgegangen war", "Höhe am Tag 21". */
export function outcomeTitle({ measure, column, unit, day, days }: Result): string {
  if (isWaterLost({ unit })) return 'Wasserverlust des Saatguts';
  const distinct = [...new Set(Object.values(days))];
  const on = day ?? (distinct.length === 1 ? (distinct[0] ?? null) : null);
  if (measure === 'germination') return on === null ? measureName(measure) : `Aufgegangen bis Tag ${number(on)}`;
  if (measure !== 'trait' || column === null) return measureName(measure);
  return on === null ? traitName(column) : `${traitName(column)} am Tag ${number(on)}`;
}
