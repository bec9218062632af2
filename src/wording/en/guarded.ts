import type { GuardedPhrase } from '../words.ts';

/** Phrases that an author's text may not use unsupported (wording.md), in the order of that list. */
export const guarded = (): readonly GuardedPhrase[] => PHRASES;

/** What turns a promise into its opposite: "does not prove", "cannot guarantee". */
const NEGATED = "(?<!(?:\\b(?:not|no|never|cannot|neither|nor|nothing|hardly)|n['’]t)\\s(?:\\w+\\s)?)";

/** Behind "the same": no thing of which it is said, such as "the same tray". */
const ALONE = '(?=\\s*(?:$|[.,;:!?)–—]|(?:as|in|for|with|and|or|but|when|whether|on|by|at)\\b))';

const NUMBER = '(?:\\d+(?:[.,]\\d+)?|an?|one|two|three|four|five|six|seven|eight|nine|ten|some|several|few|couple of)';

const PHRASES: readonly GuardedPhrase[] = [
  {
    id: 'identical',
    pattern: `${NEGATED}\\bidentical(?:ly)?\\b(?! (?:pots?|trays?|jars?|dish(?:es)?|cups?|box(?:es)?|lids?|conditions|compost)\\b)`,
    reason: 'counts never show that two kinds are identical; they show how far apart the two may be',
    offer: '“alike for this purpose”, inside a Claim that the data carry, or the difference with its range',
  },
  {
    id: 'the-same',
    pattern:
      `\\b(?:is|are|was|were|came up|come up|grew|performed|looked|behaved)\\s+(?:just |about |exactly |much |almost |nearly |all )?the same\\b${ALONE}` +
      '|\\bdid (?:just |about |exactly )?the same as\\b|\\bthe same (?:result|germination|effect)s?\\b',
    reason: 'sameness needs a smallest difference that matters, fixed beforehand, and a range inside it',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'no-effect',
    pattern:
      "(?:\\b(?:no|without(?: any| an)?|not any)|(?:\\bnot|n['’]t) have (?:an|any))(?: (?:real|visible|clear|measurable|lasting))? effects?\\b" +
      '|\\b(?:had|has|have) no influence\\b',
    reason: 'an effect that was not seen may still be there',
    offer: '“an effect could not be shown”, with the range',
  },
  {
    id: 'no-difference',
    pattern:
      '\\bno (?:real |true |clear |visible |measurable )?differences?\\b(?! (?:was|were) (?:shown|seen) \\()' +
      "|(?:\\bnot|n['’]t) (?:make (?:a|any) difference|differ)\\b",
    reason: 'a difference that was not seen may still be there',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'proves',
    pattern: `${NEGATED}\\b(?:prove[sdn]?|proving|proof (?:that|of))\\b(?! (?:nothing|little|(?:to be )?(?:too |more |quite |very )?(?:hard|difficult|easy|slow|tedious|fiddly))\\b)`,
    reason: 'one trial proves nothing; it fits with some answers and not with others',
    offer: '“the data fit with …”, with the range',
  },
  {
    id: 'works',
    pattern:
      "(?<!(?:\\b(?:I|we|you|they|who|he|she|how (?:it|this|that)|not|the)|n['’]t) )\\b(?:works|worked|(?:does|did|will) work)\\b(?! (?:on|out|with|at|in|together|by|through|late|hard)\\b)",
    reason: 'it promises the same for every other seed and bench',
    offer: 'what came up, in how many of how many, in this trial',
  },
  {
    id: 'guaranteed',
    pattern: `${NEGATED}\\bguarantee[sd]?\\b`,
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
    pattern: `\\b${NUMBER}[ -]days? (?:behind|ahead)\\b(?!\\s*\\(\\d)`,
    reason: 'how many days lie between two kinds is known only as far as the checks were close',
    offer: 'the number of days with its range, as <Num of="difference"/> (<Num of="range"/>) give it',
  },
  {
    id: 'hundred-per-cent',
    pattern:
      '(?<![\\d.,]|\\d )\\b(?:100|(?:a|one) hundred)[ \\u00a0\\u202f]?(?:%|per ?cent\\b)(?!\\s*\\(\\d+ of \\d+|\\s+of (?:the |all |all the )?\\d)',
    reason: '100 % of a few seeds is little; without the count nobody can tell',
    offer: 'the count as well: “100 % (25 of 25 seeds)”',
  },
  {
    id: 'trend',
    pattern:
      '\\btrend(?:s|ed|ing)? (?:to|towards?)\\b|\\b(?:almost|nearly|borderline|close to|just short of) significan(?:t|tly|ce)\\b|\\bapproach\\w* significance\\b',
    reason: 'a difference that was nearly shown was not shown',
    offer: '“a difference could not be shown”, with the range',
  },
  {
    id: 'doubled',
    pattern: '\\b(?:doubled|doubling|doubles(?! as\\b)|twice as many|halved|halving|half as many)\\b',
    reason: 'from fewer than 5 seeds it is hardly more than chance',
    offer: 'the two counts themselves',
  },
];
