import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { daysOf } from '../days-of.ts';
import { measureName } from './measure-name.ts';
import { number } from './number.ts';
import { traitName } from './trait-name.ts';

/** "Aufgegangen bis Tag 14", "Aufgegangen bis Tag 14 oder 21" where that depends on the lot, "Höhe am Tag 21". */
export function outcomeTitle(result: Result): string {
  const { measure, column, unit } = result;
  if (isWaterLost({ unit })) return 'Wasserverlust des Saatguts';
  const days = daysOf(result).map((day) => number(day));
  const on = days.length === 0 ? null : days.join(' oder ');
  if (measure === 'germination') return on === null ? measureName(measure) : `Aufgegangen bis Tag ${on}`;
  if (measure !== 'trait' || column === null) return measureName(measure);
  return on === null ? traitName(column) : `${traitName(column)} am Tag ${on}`;
}
