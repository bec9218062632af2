import { expect, test } from 'vitest';
import type { Effects } from '../../../src/analysis/analysis.ts';
import { noIntervalNotes } from '../../../src/wording/tables/no-interval-notes.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeComparison } from '../../support/make-comparison.ts';

const told = (effects: Effects, language = 'en') =>
  noIntervalNotes(wordsFor(language), [makeComparison({ estimate: 1, parts: { effects } })]);

test('only effect sizes that stand in the table are said to carry no interval', () => {
  expect(told({})).toEqual([]);
  expect(told({ riskRatio: null, hodgesLehmann: null })).toEqual([]);
  expect(told({ hedgesG: { estimate: -3.7, lower: -5.6, upper: -2.2 } })).toEqual([]);
  expect(told({ riskRatio: 1.26, cohensH: 0.36 })).toEqual([
    'Risk ratio, odds ratio and Cohen’s h carry no interval; the interval of the difference is the one to read.',
  ]);
  expect(told({ hodgesLehmann: -2.96 })).toEqual([
    'The Hodges–Lehmann shift carries no interval; the interval of the difference is the one to read.',
  ]);
  expect(told({ hodgesLehmann: -2.96 }, 'de')[0]).toMatch(/^Die Hodges-Lehmann-Verschiebung trägt kein Intervall/);
});
