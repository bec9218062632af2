import { analyse } from '../analysis/analyse.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from './words.ts';
import { wordsFor } from './words-for.ts';

/**
 * The analysis as it is published (`fairsown-analysis/1`): `analyse(trial)` with the sentence of each
 * caveat in its `text`, keys in the same order.
 *
 * @param language words, or the tag of their language
 * @param analysis where it has been worked out before
 */
export function publishedAnalysis(
  trial: Trial,
  language: Words | string,
  analysis: Analysis = analyse(trial),
): Analysis {
  const words = typeof language === 'string' ? wordsFor(language) : language;
  const caveats = analysis.caveats.map((caveat) => ({
    ...caveat,
    text: words.caveat(trial, analysis, caveat).sentence,
  }));
  return { ...analysis, caveats };
}
