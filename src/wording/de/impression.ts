import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { groupSentence } from './group-sentence.ts';
import { quoted } from './quoted.ts';

/** The grower's impression and, beside it, what the counts are; a lot each where impressions are given by lot. */
export function impression(
  trial: Trial,
  analysis: Analysis,
): readonly { readonly lot: string | null; readonly impression: string; readonly counts: string }[] {
  if (trial.impression === null) return [];
  const texts: [string | null, string][] =
    typeof trial.impression === 'string' ? [[null, trial.impression]] : Object.entries(trial.impression);
  return texts.map(([lot, text]) => ({
    lot,
    impression: `Der Eindruck der Beteiligten, nicht gezählt: ${quoted(text)}`,
    counts: countsOf(trial, analysis, lot),
  }));
}

function countsOf(trial: Trial, { results }: Analysis, lot: string | null): string {
  const result = results.find(({ primary }) => primary) ?? results[0];
  const groups = result?.groups.filter((group) => lot === null || group.lot === lot) ?? [];
  if (result === undefined || groups.length === 0) return 'Die Zählungen sind noch nicht verglichen.';
  return `Die Zählungen: ${groups.map((group) => groupSentence(trial, result, group)).join('. ')}.`;
}
