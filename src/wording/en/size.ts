import type { Result } from '../../analysis/analysis.ts';
import { differenceWords } from './difference-words.ts';
import { sizeText } from './size-text.ts';

/** The size of a difference of an outcome, without a direction: "10 per 100", "8 mm", "1 day". */
export const size = (value: number, { measure, column, unit }: Result): string =>
  sizeText(value, differenceWords(measure, column, unit));
