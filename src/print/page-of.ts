import type { Words } from '../wording/words.ts';
import type { PrintDocument } from './document.ts';

/** "Page 1 of 2", cut where the template puts its numbers. */
export function pageOf(words: Words): PrintDocument['pageOf'] {
  const [before = '', between = '', after = ''] = words.say('print.page', { page: '\u0000', pages: '\u0000' }).split('\u0000'); // prettier-ignore
  return [before, between, after];
}
