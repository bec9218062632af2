import type { Comparison, Result } from '../analysis/analysis.ts';
import { findingCase, type FindingCase } from './finding-case.ts';

/**
 * What was found, coarsely enough to sort trials by and no bolder than the sentence: a ceiling of "probably" is a kind of
 * its own. In the order in which lists name them, which ranks nothing.
 */
export const FINDING_KINDS = [
  'matters',
  'different',
  'probably-different',
  'alike',
  'probably-alike',
  'not-settled',
  'hardly-any',
  'cause-unclear',
  'cannot-tell',
] as const;

export type FindingKind = (typeof FINDING_KINDS)[number];

/** The kind of one comparison, by the case of wording.md that it falls under. */
export function findingKind(result: Result, comparison: Comparison): FindingKind {
  const kind = KINDS[findingCase(result, comparison)];
  if (comparison.ceiling !== 'probably') return kind;
  if (kind === 'matters' || kind === 'different') return 'probably-different';
  return kind === 'alike' ? 'probably-alike' : kind;
}

const KINDS: Readonly<Record<FindingCase, FindingKind>> = {
  matters: 'matters',
  different: 'different',
  'small-not-agreed': 'different',
  same: 'alike',
  small: 'alike',
  unclear: 'not-settled',
  'likeness-not-agreed': 'not-settled',
  'hardly-any': 'hardly-any',
  'cause-unclear': 'cause-unclear',
  'same-cause-unclear': 'cause-unclear',
  untestable: 'cannot-tell',
  'no-number': 'cannot-tell',
};
