import type { Comparison, Result } from '../../analysis/analysis.ts';
import { withSeedLuck } from '../../wording/tables/with-seed-luck.ts';
import type { Words } from '../../wording/words.ts';

/** Difference, its interval and the finding of a comparison, as the page says them. */
export function comparisonCells(words: Words, { measure, ...result }: Result, comparison: Comparison): string[] {
  const { ui } = words;
  const { interval, estimate, unit } = comparison;
  return [
    interval?.method === 'welch-bracket' ? ui['table.notKnown'] : words.difference(estimate, { ...result, measure }),
    interval && interval.lower !== null && interval.upper !== null
      ? withSeedLuck(words, words.range(interval.lower, interval.upper, measure, unit, result), interval)
      : ui['table.none'],
    words.verdict({ ...result, measure }, comparison).words,
  ];
}

/** Heads of these columns beside a treatment's own numbers. */
export const differenceHead = ({ ui }: Words): string[] => [
  ui['print.differenceFrom'],
  ui['print.itsInterval'],
  ui['table.finding'],
];

/** Heads of these columns in a table of comparisons. */
export const comparisonHead = ({ ui }: Words): string[] => [
  ui['table.difference'],
  ui['table.interval'],
  ui['table.finding'],
];
