import { amount } from '../../amount.ts';
import { differenceWords } from '../difference-words.ts';
import { rangeText } from '../range-text.ts';
import type { Saying } from './saying.ts';

/** What the check days alone allow: "0 bis 5 Tage früher". Null where they set no limit. */
export function bracketText({ comparison }: Saying): string | null {
  const { lower, upper } = comparison.bracket ?? { lower: null, upper: null };
  if (lower === null || upper === null) return null;
  const digits = Number.isInteger(lower) && Number.isInteger(upper) ? 0 : 1;
  return rangeText(amount(lower, digits), amount(upper, digits), differenceWords('t50', null, 'days'));
}
