import type { Result } from '../../analysis/analysis.ts';
import { detectableSize } from '../detectable-size.ts';
import { differenceWords } from './difference-words.ts';
import { sizeText } from './size-text.ts';

/** A detectable difference after "von", rounded up so that it promises no more than was computed. */
export const detectableText = (detectable: number, { measure, column, unit }: Result): string =>
  sizeText(detectableSize(detectable, measure), differenceWords(measure, column, unit));
