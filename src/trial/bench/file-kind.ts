import type { Table } from '../csv/table.ts';
import { isDayHeading } from '../tables/is-day-heading.ts';

export type FileKind = 'sowings' | 'counts' | 'measurements' | 'events';

/** Which of our tables this is, told by its headings: a phone may have given the file another name. Null: none of them. */
export function fileKind({ headings }: Pick<Table, 'headings'>): FileKind | null {
  const names = headings.map(({ name }) => name);
  const has = (...wanted: readonly string[]) => wanted.every((name) => names.includes(name));
  if (!has('sowing')) return null;
  if (has('lot')) return 'sowings';
  if (has('what', 'action')) return 'events';
  if (has('germinated') || headings.some(isDayHeading)) return 'counts';
  const isFates = ['abnormal', 'hard', 'fresh', 'dead'].some((name) => has(name));
  return !isFates && (has('day') || has('date')) ? 'measurements' : null;
}
