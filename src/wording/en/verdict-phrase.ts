import type { Verdict } from '../../analysis/analysis.ts';

/** A verdict as a short phrase, where no direction is at hand. */
export const verdictPhrase = (verdict: Verdict): string => PHRASES[verdict];

const PHRASES: Readonly<Record<Verdict, string>> = {
  untestable: 'cannot tell',
  same: 'alike for this purpose',
  matters: 'a difference that matters',
  different: 'a difference',
  unclear: 'not settled',
};
