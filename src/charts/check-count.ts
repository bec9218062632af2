import type { Words } from '../wording/words.ts';
import type { Check } from './germination-course.ts';

/** "133 of 200": seeds up at a check, of those sown. */
export const checkCount = ({ germinated, seeds }: Check, words: Words): string =>
  words.say('chart.countOf', { count: words.number(germinated), all: words.number(seeds) });
