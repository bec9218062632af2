import type { Analysis } from '../../analysis/analysis.ts';
import type { GuardedPhrase, Words } from '../../wording/words.ts';
import type { TrialData } from './check-components.ts';

/** A phrase in a text that the data do not carry, or not in that way. */
export interface FoundPhrase {
  readonly phrase: GuardedPhrase;
  /** As it stands there. */
  readonly found: string;
  /** Where it begins and ends in the text. */
  readonly start: number;
  readonly end: number;
}

/** Below this many seedlings a doubling is hardly more than chance (wording.md). */
const ENOUGH_TO_DOUBLE = 5;

/**
 * The phrases of a text that nobody may use unsupported (wording.md), from left to right; of those that overlap
 * the longest. What is said to have doubled is let pass where at least five came up in each group.
 *
 * @param data null where there is none yet
 */
export function guardedPhrases(text: string, words: Words, data: Pick<TrialData, 'analysis'> | null): FoundPhrase[] {
  const spaced = text.replace(/\s/gu, ' '); // a line may end inside a phrase
  const found = words
    .guarded()
    .flatMap((phrase) =>
      [...spaced.matchAll(patternOf(phrase))].map((match) => ({
        phrase,
        found: match[0],
        start: match.index,
        end: match.index + match[0].length,
      })),
    )
    .filter(({ phrase: { id } }) => id !== 'doubled' || data === null || hasFew(data.analysis()))
    .toSorted((a, b) => b.end - b.start - (a.end - a.start) || a.start - b.start);
  const kept: FoundPhrase[] = [];
  for (const one of found) {
    if (!kept.some(({ start, end }) => one.start < end && start < one.end)) kept.push(one);
  }
  return kept.toSorted((a, b) => a.start - b.start);
}

const patterns = new WeakMap<GuardedPhrase, RegExp>();

function patternOf(phrase: GuardedPhrase): RegExp {
  const pattern = patterns.get(phrase) ?? new RegExp(phrase.pattern, 'giu');
  patterns.set(phrase, pattern);
  return pattern;
}

const hasFew = ({ results }: Analysis) =>
  results.some(({ measure, groups }) =>
    groups.some(({ count }) => measure === 'germination' && count !== null && count < ENOUGH_TO_DOUBLE),
  ) || results.length === 0;
