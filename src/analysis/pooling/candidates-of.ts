import type { Measure } from '../../trial/trial.ts';
import type { Comparison, Result } from '../analysis.ts';
import type { PoolReason } from '../pooled.ts';
import type { Answer, Entry } from './answer.ts';

/** A comparison of a trial that could answer the question. */
export interface Candidate {
  readonly result: Result;
  readonly comparison: Comparison;
  readonly treatment: string;
  readonly control: string;
  /** The trial compared the control of the question against its treatment. */
  readonly turned: boolean;
  /** The question names the treatments of this trial, so they need not be called as in the others. */
  readonly named: boolean;
  readonly firstLotOnly: boolean;
}

/**
 * The comparisons of a trial that an entry of a question can mean, each also turned round: one a pair of treatments, over all
 * lots where the trial has put them together, else in the lot that is named, else in its first.
 *
 * @returns why there is none
 */
export function candidatesOf(
  measure: Measure,
  entry: Entry,
  { trial, analysis }: Answer,
): readonly Candidate[] | PoolReason {
  const result = resultFor(measure, entry, analysis.results);
  if (typeof result === 'string') return result;
  const comparisons = result.comparisons.filter(({ lot }) => entry.lot === null || lot === entry.lot);
  const atOnce = comparisons.filter(({ stored }) => stored === null);
  if (atOnce.length === 0) return comparisons.length > 0 ? 'several-times' : 'other-measure';

  const lots = ['all', ...trial.lots.map(({ id }) => id)];
  const pairs = Map.groupBy(atOnce, ({ treatment, control }) => JSON.stringify([treatment, control]));
  const named = entry.treatment !== null || entry.control !== null;
  const found = [...pairs.values()].flatMap((alike) => {
    const [comparison] = alike.toSorted((a, b) => lots.indexOf(a.lot) - lots.indexOf(b.lot));
    if (!comparison) return [];
    const { treatment, control } = comparison;
    const common = { result, comparison, named, firstLotOnly: comparison.lot !== 'all' && alike.length > 1 };
    return [
      { ...common, treatment, control, turned: false },
      { ...common, treatment: control, control: treatment, turned: true },
    ];
  });
  const wanted = found.filter(
    ({ treatment, control }) =>
      (entry.treatment === null || treatment === entry.treatment) &&
      (entry.control === null || control === entry.control),
  );
  return wanted.length > 0 ? wanted : 'treatments-differ';
}

/** The outcome that is named; else the primary one of this measure, or the only one. */
function resultFor(measure: Measure, { outcome }: Entry, results: readonly Result[]): Result | PoolReason {
  const found = results.filter(
    (result) => result.measure === measure && (outcome ?? result.outcome) === result.outcome,
  );
  const result = found.find(({ primary }) => primary) ?? found[0];
  if (!result) return 'other-measure';
  return found.length > 1 && !result.primary ? 'outcome-not-named' : result;
}
