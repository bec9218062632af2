import type { Saying } from './saying.ts';
import { date } from '../date.ts';

/** What a difference that was shown means for the smallest difference that matters. */
export function marginTail({ facts, margin, tray, was }: Saying): string {
  if (facts.margin === null) return ' No smallest difference that matters was set beforehand.';
  if (facts.likenessHeldBack !== null) {
    return ` The whole range is less than the ${margin} that ${was} to matter, but with ${
      facts.likenessHeldBack === 'coarse' ? 'checks so far apart' : `fewer than 3 ${tray(2)} of each`
    } the two are not called alike.`;
  }
  if (!facts.marginFixed)
    return ` It may or may not be the ${margin} named as mattering, which ${was} not fixed before counting.`;
  return ` It may or may not be the ${margin} that ${was} to matter.`;
}

/** "The 10 per 100 was set on 4 April 2026, before counting."; nothing where no date is known. */
export function marginDate({ facts, margin, was }: Saying): string {
  if (facts.marginDate === null) return '';
  const { date: day, stated } = facts.marginDate;
  return ` The ${margin} ${was} set on ${date(day)}, before counting${stated ? ', as the authors state' : ''}.`;
}
