import type { Thing } from '../words.ts';
import { number } from './number.ts';
import { plural } from './plural.ts';

/** "3 trials", "1 trial", "2 batches". */
export const counted = (count: number, thing: Thing | (string & {})): string =>
  `${number(count)} ${count === 1 ? thing : plural(thing)}`;
