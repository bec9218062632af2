import type { Saying } from './saying.ts';

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
