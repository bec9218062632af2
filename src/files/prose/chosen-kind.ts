import type { Analysis, Result } from '../../analysis/analysis.ts';
import { chartKinds } from './chart-kinds.ts';
import { chosenResult, type Choice } from './chosen-result.ts';
import { oneOf } from './one-of.ts';

export interface ChartChoice extends Choice {
  /** The first of the report's own where it is not given. */
  readonly kind?: string | undefined;
}

/**
 * The chart that an author placed.
 *
 * @throws {AttributeError} for a choice that the trial does not have
 */
export function chosenKind(analysis: Analysis, choice: ChartChoice): { result: Result; lot: string; kind: string } {
  const { result, lot } = chosenResult('Chart', analysis, choice);
  return { result, lot, kind: oneOf('<Chart kind>', choice.kind, chartKinds(result, lot)) };
}
