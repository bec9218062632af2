import type { Result } from '../../analysis/analysis.ts';
import { differenceWords } from './difference-words.ts';
import { sizeText } from './size-text.ts';

/** A detectable difference, rounded up so that it promises no more than was computed: "11 per 100", "1.3 days". */
export function detectableText(detectable: number, { measure, column, unit }: Result): string {
  const size = measure === 'germination' ? Math.ceil(detectable) : Math.ceil(detectable * 10) / 10;
  return sizeText(size, differenceWords(measure, column, unit));
}
