import type { Result } from '../../analysis/analysis.ts';
import { differenceWords } from './difference-words.ts';
import { sizeText } from './size-text.ts';

/** The size of a difference of an outcome, without a direction: nach „von“: "10 je 100", "8 mm", "2 Tagen". */
export const size = (value: number, { measure, column, unit }: Result): string =>
  sizeText(value, differenceWords(measure, column, unit));
