import type { Analysis, Caveat } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { caveatWords } from '../caveats/caveat-words.ts';
import { list } from '../list.ts';

/** Reason clauses of the caveats that set a ceiling, joined; of more than three the rest are counted. */
export function reasonsText(trial: Trial, analysis: Analysis, caveats: readonly Caveat[]): string {
  const clauses = [...new Set(caveats.map((caveat) => caveatWords(trial, analysis, caveat).reason))];
  if (clauses.length === 0) return 'of the caveats named beside this';
  if (clauses.length <= 3) return list(clauses);
  return `${clauses.slice(0, 3).join(', ')}, and for ${clauses.length - 3} more named beside this`;
}
