import type { Analysis, Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';

/** The finding as title: up to two comparisons by their numbers, more by how many had which verdict. */
export function chartTitle(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  comparisons: readonly Comparison[],
  words: Words,
): string {
  const outcome = words.outcomeTitle(trial, result);
  if (comparisons.length === 0) return outcome;
  if (comparisons.length <= 2) {
    return comparisons.map((comparison) => words.headline(trial, analysis, result, comparison)).join('; ');
  }
  const verdicts = comparisons.map((comparison) => words.verdict(result, comparison).words);
  const counts = [...new Set(verdicts)].map((verdict) =>
    words.say('chart.verdictCount', {
      count: verdicts.filter((other) => other === verdict).length,
      all: verdicts.length,
      verdict,
    }),
  );
  return words.say('chart.titleOfMany', { outcome, verdicts: counts.join('; ') });
}
