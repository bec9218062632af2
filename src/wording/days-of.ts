import type { Result } from '../analysis/analysis.ts';

/** The days on which the lots of an outcome were counted or measured, rising; none where they are too many for a title. */
export function daysOf({ day, days }: Pick<Result, 'day' | 'days'>): readonly number[] {
  if (day !== null) return [day];
  const distinct = [...new Set(Object.values(days))].toSorted((a, b) => a - b);
  return distinct.length > 3 ? [] : distinct;
}
