import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { lotsOf } from '../../../src/analysis/lots-of.ts';
import { chosenKind } from '../../../src/files/prose/chosen-kind.ts';
import { outcomeCharts } from '../../../src/report/outcome-charts.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { demoTrials } from './prose-said.ts';

const shown = demoTrials.flatMap((trial) => {
  const analysis = analyse(trial);
  return analysis.results.flatMap((result) => lotsOf(result).map((lot) => ({ trial, analysis, result, lot })));
});

test('the kinds of charts that an author may name are those that the report has', () => {
  expect(shown.length).toBeGreaterThan(15);
  for (const { trial, analysis, result, lot } of shown) {
    const kinds = outcomeCharts(wordsFor('en'), trial, analysis, result, lot).map(({ kind }) => kind);
    for (const kind of kinds) expect(chosenKind(analysis, { outcome: result.outcome, lot, kind }).kind).toBe(kind);
    expect(() => chosenKind(analysis, { outcome: result.outcome, lot, kind: 'none' })).toThrow(
      `allowed: ${kinds.join(', ')}.`,
    );
  }
});
