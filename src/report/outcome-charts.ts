import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Chart } from '../charts/chart.ts';
import { differences } from '../charts/differences.ts';
import { germinationCurves } from '../charts/germination-curves.ts';
import { survival } from '../charts/survival.ts';
import { trait } from '../charts/trait.ts';
import { units } from '../charts/units.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';

/** The charts of one outcome in one lot (or `"all"` lots together), in the order in which they are read. */
export function outcomeCharts(words: Words, trial: Trial, analysis: Analysis, result: Result, lot: string): Chart[] {
  if (lot === 'all') return [differences(trial, analysis, result, words)];
  switch (result.measure) {
    case 'germination': {
      const tests = [...new Set(result.groups.filter((group) => group.lot === lot).map(({ stored }) => stored))];
      const curves = tests.map((stored) => germinationCurves(trial, analysis, result, lot, words, stored));
      return [...(tests.length === 1 ? curves : []), units(trial, analysis, result, lot, words)];
    }
    case 'storage':
      return [survival(trial, analysis, result, lot, words)];
    case 'trait':
      return [trait(trial, analysis, result, lot, words)];
    default:
      return [units(trial, analysis, result, lot, words)];
  }
}
