import type { LotTest } from '../../analysis/lot-tests.ts';
import type { Words } from '../words.ts';

/** What `lotTestsTable` holds, with the day of the count where it is the same in every test. */
export function lotTestsCaption(words: Words, tests: readonly LotTest[]): string {
  const [day, ...others] = new Set(tests.map((test) => test.day));
  if (day === undefined || others.length > 0) return words.ui['lot.testsCaption'];
  return words.say('lot.testsCaptionDay', { day: words.number(day) });
}
