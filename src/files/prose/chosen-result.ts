import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import { lotsOf } from '../../analysis/lots-of.ts';
import { oneOf } from './one-of.ts';

/** What an author can name on a component; what is not named is the primary outcome, its first lot, every treatment. */
export interface Choice {
  readonly outcome?: string | undefined;
  readonly lot?: string | undefined;
  readonly treatment?: string | undefined;
}

/**
 * The result that a component in an author's text speaks of.
 *
 * @throws {AttributeError} for a name that the trial does not have
 */
export function chosenResult(
  component: string,
  analysis: Analysis,
  choice: Choice,
): { result: Result; lot: string; comparisons: readonly Comparison[] } {
  const place = `<${component}`;
  const inOrder = [...analysis.results].sort((a, b) => Number(b.primary) - Number(a.primary));
  const outcome = oneOf(
    `${place} outcome>`,
    choice.outcome,
    inOrder.map((result) => result.outcome),
  );
  const result = inOrder.find((candidate) => candidate.outcome === outcome) as Result;
  const lot = oneOf(`${place} lot>`, choice.lot, lotsOf(result));
  const inLot = result.comparisons.filter((comparison) => comparison.lot === lot);
  if (choice.treatment === undefined) return { result, lot, comparisons: inLot };
  const treatment = oneOf(
    `${place} treatment>`,
    choice.treatment,
    inLot.map((comparison) => comparison.treatment),
  );
  return { result, lot, comparisons: inLot.filter((comparison) => comparison.treatment === treatment) };
}
