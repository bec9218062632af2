import { date } from '../date.ts';
import type { Saying } from './saying.ts';

/** "The 10 per 100 was set on 4 April 2026, before counting."; nothing where no date is known. */
export function marginDate({ facts, margin, was }: Saying): string {
  if (facts.marginDate === null) return '';
  const { date: day, stated } = facts.marginDate;
  return ` The ${margin} ${was} set on ${date(day)}, before counting${stated ? ', as the authors state' : ''}.`;
}
