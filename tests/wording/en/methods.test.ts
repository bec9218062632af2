import { expect, test } from 'vitest';
import { METHOD_IDS } from '../../../src/wording/method-ids.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { germinationTrial, makeLot, makeOutcome } from '../../support/make-trial.ts';

const words = wordsFor('en');
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
    "unit: Sealed jar against Paper packet: 4 and 4 trays.
    share: 
    dispersion: Sealed jar against Paper packet: φ 4.51 on 6 df; used φ* 4.15 on 7 df.
    difference: Sealed jar against Paper packet: Newcombe hybrid score, effective seed numbers, t quantile.
    score-test: Sealed jar against Paper packet: score test, F with dispersion φ*: F 2.52 on 1 and 7 df, p 0.16.
    permutation: Sealed jar against Paper packet: 70 arrangements, all of them: p 0.20.
    effect-sizes: 
    verdict: Came up by day 14: the smallest difference that matters is 10 per 100, fixed on 1 April 2026, as the authors state.
    detectable: Sealed jar against Paper packet: 31 per 100, 4 times in 5.
    agreement: 
    caveats: 
    software: Worked out with Fairsown 0.1.0."
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
    "unit: Sealed jar against Paper packet. Leek, Onion and Dill each: 4 and 4 trays.
    dispersion: Sealed jar against Paper packet. Leek and Onion each: φ 4.51 on 6 df; used φ* 4.15 on 7 df. Dill: φ 0.00 on 6 df; used φ* 1.00 on 7 df."
  `);
});
