import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { lotsOf } from '../../../src/analysis/lots-of.ts';
import { chartKinds } from '../../../src/files/prose/chart-kinds.ts';
import { chosenKind } from '../../../src/files/prose/chosen-kind.ts';
import { outcomeFigures } from '../../../src/report/outcome-figures.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { demoTrials } from './prose-said.ts';

const shown = demoTrials.flatMap((trial) => {
  const analysis = analyse(trial);
  return analysis.results.map((result) => ({ trial, analysis, result }));
});

test('the kinds of charts that an author may name are those that the report has', () => {
  expect(shown.length).toBeGreaterThan(15);
  for (const { trial, analysis, result } of shown) {
    const drawn = outcomeFigures(wordsFor('en'), trial, analysis, result).map(({ chart }) => chart.kind);
    const named = lotsOf(result).flatMap((lot) => {
      const kinds = chartKinds(result, lot);
      for (const kind of kinds) expect(chosenKind(analysis, { outcome: result.outcome, lot, kind }).kind).toBe(kind);
      expect(() => chosenKind(analysis, { outcome: result.outcome, lot, kind: 'none' })).toThrow(
        `allowed: ${kinds.join(', ')}.`,
      );
      return kinds;
    });
    expect(new Set(drawn)).toEqual(new Set(named));
  }
});
