import type { Analysis, Comparison, Group, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import { chosenResult, type Choice } from './chosen-result.ts';
import { oneOf } from './one-of.ts';
import { AttributeError } from './attribute-error.ts';

export interface NumChoice extends Choice {
  /** `difference`, `range` and `p` compare a treatment with the control; the others speak of one treatment alone. */
  readonly of?: string | undefined;
}

const COMPARED = ['difference', 'range', 'p'] as const;
const ALONE = ['estimate', 'count', 'seeds', 'units'] as const;

/**
 * One number of the analysis, worded: "12 more per 100", "3 to 21", "0.031", "76 %", "151", "200", "4 trays".
 *
 * @throws {AttributeError} for a choice that the trial does not have, or a number that could not be computed
 */
export function chosenNumber(words: Words, trial: Trial, analysis: Analysis, choice: NumChoice): string {
  const of = oneOf('<Num of>', choice.of, [...COMPARED, ...ALONE]);
  const text = COMPARED.some((compared) => compared === of)
    ? ofComparison(words, of, analysis, choice)
    : ofGroup(words, trial, of, analysis, choice);
  if (text !== null) return text;
  throw new AttributeError(
    `<Num of="${of}">: this number could not be computed`,
    "The report's caveats say why; take the component out.",
  );
}

function ofComparison(words: Words, of: string, analysis: Analysis, choice: NumChoice): string | null {
  const { result, comparisons } = chosenResult('Num', analysis, choice);
  const comparison: Comparison | undefined = comparisons[0];
  if (!comparison) return null;
  if (of === 'difference') return comparison.estimate === null ? null : words.difference(comparison.estimate, result);
  if (of === 'p') return comparison.test === null ? null : words.pValue(comparison.test.p);
  const { interval } = comparison;
  return interval && words.range(interval.lower, interval.upper, result.measure, comparison.unit, result);
}

function ofGroup(words: Words, trial: Trial, of: string, analysis: Analysis, choice: NumChoice): string | null {
  const { result, lot } = chosenResult('Num', analysis, { outcome: choice.outcome, lot: choice.lot });
  const group = groupOf(result, lot, choice);
  if (of === 'units') return words.units(trial, group);
  if (of === 'count') return group.count === null ? null : words.number(group.count);
  if (of === 'seeds') return group.seeds === null ? null : words.number(group.seeds);
  return group.estimate === null ? null : words.quantity(group.estimate, result.unit, group.seeds);
}

function groupOf(result: Result, lot: string, choice: NumChoice): Group {
  const groups = result.groups.filter((group) => group.lot === lot);
  const treatment = oneOf(
    '<Num treatment>',
    choice.treatment,
    groups.map((group) => group.treatment),
  );
  return groups.find((group) => group.treatment === treatment) as Group;
}
