import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/** The size of a difference after "von", without a direction: "10 je 100", "8 mm", "1 Tag", "2 Tagen". */
export const sizeText = (size: number, { unit, after }: DifferenceWords): string =>
  `${inUnit(number(size), unit, 'dative')}${after}`;
