import { expect, test } from 'vitest';
import { METHOD_IDS } from '../../../src/wording/method-ids.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { germinationTrial, makeLot, makeOutcome } from '../../support/make-trial.ts';

const words = wordsFor('de');
const applied = (trial: ReturnType<typeof germinationTrial>) => words.methods(trial, publishedAnalysis(trial, words));
const counts = {
  packet: [
    [40, 50],
    [30, 50],
    [45, 50],
    [36, 50],
  ],
  jar: [
    [42, 50],
    [38, 50],
    [47, 50],
    [49, 50],
  ],
} as const;
const outcomes = [makeOutcome({ matters: 10 })];

test('what was applied to a germination trial, with its numbers', () => {
  const trial = germinationTrial(counts, { outcomes });
  expect(
    applied(trial)
      .map(({ id, plain }) => `${id}: ${plain.slice(1).join(' ')}`)
      .join('\n'),
  ).toMatchInlineSnapshot(`
    "unit: Sealed jar gegen Paper packet: 4 und 4 Schalen.
    share: 
    dispersion: Sealed jar gegen Paper packet: φ 4,51 mit 6 Freiheitsgraden; verwendet φ* 4,15 mit 7 Freiheitsgraden.
    difference: Sealed jar gegen Paper packet: Newcombe-Hybrid-Score, effektive Samenzahlen, t-Quantil.
    score-test: Sealed jar gegen Paper packet: Score-Test, F mit Überstreuung φ*: F 2,52 mit 1 und 7 Freiheitsgraden, p 0,16.
    permutation: Sealed jar gegen Paper packet: 70 Anordnungen, alle: p 0,20.
    effect-sizes: 
    verdict: Aufgegangen bis Tag 14: Schwelle von 10 je 100 (kleinster Unterschied, der zählt), festgelegt am 1. April 2026, wie die Beteiligten angeben.
    detectable: Sealed jar gegen Paper packet: ein Unterschied von 31 je 100, in 4 von 5 Fällen.
    agreement: 
    caveats: 
    software: Berechnet mit Fairsown 0.1.0."
  `);
});

test('only what was applied is told', () => {
  const ids = applied(germinationTrial(counts, { outcomes })).map(({ id }) => id);
  expect(ids).not.toContain('means');
  expect(ids).not.toContain('one-unit');
  expect(ids).not.toContain('blocks');
  const one = applied(germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { outcomes })).map(({ id }) => id);
  expect(one).toContain('one-unit');
  expect(one).not.toContain('score-test');
  const growing = applied(germinationTrial(counts, { outcomes, status: 'growing' })).map(({ id }) => id);
  expect(growing).toEqual(['software']);
});

test('the methods page tells every method, how it was checked, and whether its sources were read', () => {
  const all = words.allMethods();
  expect(all.map(({ id }) => id)).toEqual(METHOD_IDS);
  for (const { title, plain, checkedAgainst, sources } of all) {
    expect(plain.length, title).toBeGreaterThan(0);
    expect(checkedAgainst.length, title).toBeGreaterThan(20);
    expect(plain.join(' '), title).not.toMatch(/undefined|95 % chance|significan/);
    expect(
      sources.every(({ text }) => /\d{4}|Rules/.test(text)),
      title,
    ).toBe(true);
  }
});

test('several lots of one comparison are told in one line, those with the same numbers together', () => {
  const one = germinationTrial(counts, { outcomes });
  const copy = <Row extends object>(rows: readonly Row[], lot: string, change: (row: Row) => Partial<Row>) =>
    rows.map((row) => ({ ...row, ...change(row), lot }));
  const trial = {
    ...one,
    lots: [...one.lots, makeLot('onion', 'onion'), makeLot('dill', 'dill')],
    sowings: [
      ...one.sowings,
      ...['onion', 'dill'].flatMap((lot) => copy(one.sowings, lot, ({ id }) => ({ id: `${lot} ${id}` }))),
    ],
    counts: [
      ...one.counts,
      ...['onion', 'dill'].flatMap((lot) =>
        one.counts.map((count) => ({
          ...count,
          sowing: `${lot} ${count.sowing}`,
          germinated: lot === 'dill' ? 30 : count.germinated,
        })),
      ),
    ],
  };
  const told = applied(trial).filter(({ id }) => id === 'unit' || id === 'dispersion' || id === 'lots');
  expect(told.map(({ id, plain }) => `${id}: ${plain.slice(1).join(' | ')}`).join('\n')).toMatchInlineSnapshot(`
    "unit: Sealed jar gegen Paper packet. Leek, Onion und Dill jeweils: 4 und 4 Schalen.
    dispersion: Sealed jar gegen Paper packet. Leek und Onion jeweils: φ 4,51 mit 6 Freiheitsgraden; verwendet φ* 4,15 mit 7 Freiheitsgraden. Dill: φ 0,00 mit 6 Freiheitsgraden; verwendet φ* 1,00 mit 7 Freiheitsgraden."
  `);
});
