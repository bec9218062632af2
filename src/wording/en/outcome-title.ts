import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { measureName } from './measure-name.ts';
import { number } from './number.ts';
import { sentence } from '../sentence.ts';

/** "Came up by day 14", "Day by which half were up", "Height on day 21". */
export function outcomeTitle({ measure, column, unit, day, days }: Result): string {
  if (isWaterLost({ unit })) return 'Water lost by the seed';
  const distinct = [...new Set(Object.values(days))];
  const on = day ?? (distinct.length === 1 ? (distinct[0] ?? null) : null);
  if (measure === 'germination') return on === null ? measureName(measure) : `Came up by day ${number(on)}`;
  if (measure !== 'trait' || column === null) return measureName(measure);
  const name = sentence(column.replaceAll('_', ' '));
  return on === null ? name : `${name} on day ${number(on)}`;
}
