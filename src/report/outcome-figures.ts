import type { Analysis, Result } from '../analysis/analysis.ts';
import { lotsOf } from '../analysis/lots-of.ts';
import type { Chart } from '../charts/chart.ts';
import { chartKinds } from '../files/prose/chart-kinds.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { figureLots } from './figure-lots.ts';
import { outcomeChart } from './outcome-chart.ts';
import { slug } from './slug.ts';

/** A chart of the report, under its id on the page. */
export interface OutcomeFigure {
  readonly id: string;
  readonly chart: Chart;
}

/**
 * The figures of one outcome in the order in which they are read: those of all lots together first. Where not one
 * unit has a value, as no time where nothing came up, an empty chart is left out.
 */
export function outcomeFigures(words: Words, trial: Trial, analysis: Analysis, result: Result): OutcomeFigure[] {
  const kinds = new Set(lotsOf(result).flatMap((lot) => chartKinds(result, lot)));
  const isEmpty = !result.values.some(({ value }) => value !== null);
  return [...kinds].flatMap((kind) =>
    isEmpty && (kind === 'units' || kind === 'trait')
      ? []
      : figureLots(result, kind).map((lots) => ({
          id: slug('result', result.outcome, lots[0] ?? '', kind),
          chart: outcomeChart(words, trial, analysis, result, kind, lots),
        })),
  );
}
