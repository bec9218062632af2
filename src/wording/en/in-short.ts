import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Finding } from '../words.ts';
import { comparisonSentence } from './comparison-sentence.ts';
import { verdictMark } from './verdict-mark.ts';

/** One finding a comparison of the primary outcome, pooled comparisons first. */
export function inShort(trial: Trial, analysis: Analysis): readonly Finding[] {
  const result = analysis.results.find(({ primary }) => primary) ?? analysis.results[0];
  if (result === undefined) return [];
  const pooled = result.comparisons.filter(({ lot }) => lot === 'all');
  const single = result.comparisons.filter(({ lot }) => lot !== 'all');
  return [...pooled, ...single].map((comparison) => ({
    result,
    comparison,
    sentence: comparisonSentence(trial, analysis, result, comparison),
    mark: verdictMark(result, comparison),
  }));
}
