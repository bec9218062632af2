import type { Result } from '../../analysis/analysis.ts';
import { detectableSize } from '../detectable-size.ts';
import { differenceWords } from './difference-words.ts';
import { sizeText } from './size-text.ts';

/** A detectable difference, rounded up so that it promises no more than was computed: "11 per 100", "1.3 days". */
export const detectableText = (detectable: number, { measure, column, unit }: Result): string =>
  sizeText(detectableSize(detectable, measure), differenceWords(measure, column, unit));
