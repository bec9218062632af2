import type { GuardedPhrase } from '../words.ts';

/** Phrases that an author's text may not use unsupported (wording.md), in the order of that list. */
export const guarded = (): readonly GuardedPhrase[] => PHRASES;

const PHRASES: readonly GuardedPhrase[] = [
  {
    id: 'identical',
    pattern: '\\bidentical(?:ly)?\\b',
    reason: 'counts never show that two kinds are identical; they show how far apart the two may be',
    offer: '“alike for this purpose”, inside a Claim that the data carry, or the difference with its range',
  },
  {
    id: 'the-same',
    pattern:
      '\\b(?:is|are|was|were|came up|come up|grew|did|performed|looked)\\s+(?:just |about |exactly |much |almost |nearly )?the same\\b|\\bthe same (?:result|germination|effect)s?\\b',
    reason: 'sameness needs a smallest difference that matters, fixed beforehand, and a range inside it',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'no-effect',
    pattern: '\\b(?:no|without(?: any)?|not? any) effects?\\b|\\b(?:had|has|have) no influence\\b',
    reason: 'an effect that was not seen may still be there',
    offer: '“an effect could not be shown”, with the range',
  },
  {
    id: 'no-difference',
    pattern: '\\bno (?:real |true |clear )?differences?\\b|\\bmakes? no difference\\b',
    reason: 'a difference that was not seen may still be there',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'proves',
    pattern: '\\bpro(?:of that|ve[sdn]?|ven|ving)\\b',
    reason: 'one trial proves nothing; it fits with some answers and not with others',
    offer: '“the data fit with …”, with the range',
  },
  {
    id: 'works',
    pattern: '\\b(?:works?|worked)\\b(?! (?:on|out|with|at|in|together|by|through)\\b)',
    reason: 'it promises the same for every other seed and bench',
    offer: 'what came up, in how many of how many, in this trial',
  },
  {
    id: 'guaranteed',
    pattern: '\\bguarantee[sd]?\\b',
    reason: 'no trial can promise what comes up next time',
    offer: 'what came up, in how many of how many, in this trial',
  },
  {
    id: 'significant',
    pattern: '\\b(?:non-?|in)?significan(?:t|tly|ce)\\b',
    reason: 'readers take it for “large”, and it says nothing about size',
    offer: 'the difference with its range',
  },
  {
    id: 'days-apart',
    pattern: '\\b\\d+(?:[.,]\\d+)? days? (?:behind|ahead)\\b',
    reason: 'how many days lie between two kinds is known only as far as the checks were close',
    offer: 'the number of days with its range, as <Num> gives it',
  },
  {
    id: 'hundred-per-cent',
    pattern: '(?<!\\d )\\b100 ?(?:%|per ?cent)(?!\\s*\\()',
    reason: '100 % of a few seeds is little; without the count nobody can tell',
    offer: 'the count as well: “100 % (25 of 25 seeds)”',
  },
  {
    id: 'trend',
    pattern:
      '\\btrend(?:s|ed|ing)? (?:to|towards?)\\b|\\balmost significan(?:t|tly)\\b|\\bapproach\\w* significance\\b',
    reason: 'a difference that was nearly shown was not shown',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'doubled',
    pattern: '\\b(?:doubl(?:e|ed|es|ing)|twice as many|halv(?:e|ed|es|ing)|half as many)\\b',
    reason: 'from fewer than 5 seeds it is hardly more than chance',
    offer: 'the two counts themselves',
  },
];
