import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { daysOf } from '../days-of.ts';
import { measureName } from './measure-name.ts';
import { number } from './number.ts';
import { sentence } from '../sentence.ts';

/** "Came up by day 14", "Came up by day 14 or 21" where that depends on the lot, "Height on day 21". */
export function outcomeTitle(result: Result): string {
  const { measure, column, unit } = result;
  if (isWaterLost({ unit })) return 'Water lost by the seed';
  const days = daysOf(result).map((day) => number(day));
  const on = days.length === 0 ? null : days.join(' or ');
  if (measure === 'germination') return on === null ? measureName(measure) : `Came up by day ${on}`;
  if (measure !== 'trait' || column === null) return measureName(measure);
  const name = sentence(column.replaceAll('_', ' '));
  return on === null ? name : `${name} on day ${on}`;
}
