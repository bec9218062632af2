import type { Analysis, Caveat } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { caveatWords } from '../caveats/caveat-words.ts';
import { list } from '../list.ts';

/** Reason clauses of the caveats that set a ceiling, as main clauses, joined; of more than three the rest are counted. */
export function reasonsText(trial: Trial, analysis: Analysis, caveats: readonly Caveat[]): string {
  const clauses = [...new Set(caveats.map((caveat) => caveatWords(trial, analysis, caveat).reason))];
  if (clauses.length === 0) return 'es gelten die Vorbehalte, die daneben stehen';
  if (clauses.length <= 3) return list(clauses);
  const more = clauses.length - 3;
  const rest = more === 1 ? 'ein weiterer Vorbehalt steht daneben' : `${more} weitere Vorbehalte stehen daneben`;
  return list([...clauses.slice(0, 3), rest]);
}
