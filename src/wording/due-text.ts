import type { Due } from '../analysis/due-next.ts';
import type { Words } from './words.ts';

/** What a trial waits for next, without its date: "counted next on day 12". */
export const dueText = (words: Words, { what, at }: Due): string =>
  words.say(`home.due.${what}`, { at: what === 'test' ? words.counted(at, 'year') : words.number(at) });
