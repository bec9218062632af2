import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/** The size of a difference, without a direction: "10 per 100", "8 mm", "1 day". */
export const sizeText = (size: number, { unit, after }: DifferenceWords): string =>
  `${inUnit(number(size), unit)}${after}`;
