import type { Result } from '../analysis.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/**
 * Sowings that were sown and do not enter an outcome, by lot and treatment, with what becomes of the
 * comparisons when they are put back. Sowings without a seed number have a caveat of their own.
 */
export const sowingsLeftOut: Rule = (trial, results) =>
  results.flatMap((result) => {
    const sowings = new Map(trial.sowings.map((sowing) => [sowing.id, sowing]));
    const out = result.leftOut.filter(({ reason }) => reason !== 'no-seed-number');
    const groupOf = (id: string) => JSON.stringify([sowings.get(id)?.lot ?? null, sowings.get(id)?.treatment ?? null]);
    return [...Map.groupBy(out, ({ sowing }) => groupOf(sowing))].map(([key, rows]) => {
      const [lot, treatment]: [string | null, string | null] = JSON.parse(key);
      const about = { outcome: result.outcome, lot, treatment };
      return makeCaveat('sowings-left-out', about, { sowings: rows, verdicts: verdictsOf(result, lot, treatment) });
    });
  });

function verdictsOf({ comparisons }: Result, lot: string | null, treatment: string | null) {
  return comparisons
    .filter((comparison) => comparison.lot === lot)
    .filter((comparison) => treatment === comparison.treatment || treatment === comparison.control)
    .map((comparison) => ({
      treatment: comparison.treatment,
      verdict: comparison.verdict,
      withThem: comparison.withLeftOut?.verdict ?? null,
    }));
}
