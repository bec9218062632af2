import type { ClaimWords } from '../words.ts';

/** Words by which a sentence takes a side, or leaves it open. */
export const claimWords = (): ClaimWords => WORDS;

const WORDS: ClaimWords = {
  higher: '\\b(?:more|higher|better|taller|longer|heavier|larger|bigger|greater|stronger|faster)\\b',
  lower: '\\b(?:fewer|less|lower|worse|shorter|lighter|smaller|weaker|slower)\\b',
  earlier: '\\b(?:earlier|sooner|quicker|faster)\\b',
  later: '\\b(?:later|slower)\\b',
  same: '\\b(?:alike|equal(?:ly)?|the same|similar(?:ly)?|too small|small difference|(?:less|smaller) than)\\b',
  unclear:
    "\\b(?:cannot|could not|can not|may|might|perhaps|whether|unclear|uncertain|unsure|unknown|open|first look|nobody knows|no telling)\\b|n['’]t\\b|\\bnot (?:yet |been )?(?:shown|known|clear|sure|certain|settled|proof|told)\\b|\\btoo (?:few|early|little)\\b",
};
