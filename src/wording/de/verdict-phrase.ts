import type { Verdict } from '../../analysis/analysis.ts';

/** A verdict as a short phrase, where no direction is at hand. */
export const verdictPhrase = (verdict: Verdict): string => PHRASES[verdict];

const PHRASES: Readonly<Record<Verdict, string>> = {
  untestable: 'lässt sich nicht sagen',
  same: 'gleich genug für diesen Zweck',
  matters: 'ein Unterschied, der zählt',
  different: 'ein Unterschied',
  unclear: 'offen',
};
