import { expect, test } from 'vitest';
import { caveatsOf } from '../../../src/analysis/caveats/caveats-of.ts';
import { WEIGHTS } from '../../../src/analysis/caveats/make-caveat.ts';
import { RULES } from '../../../src/analysis/caveats/rules.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { germinationTrial, makeLot, makeOutcome } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const ids = (trial: Trial, results = [resultOf(trial, { matters: 10 })]) =>
  caveatsOf(trial, results).map(({ id }) => id);
const tray = (count: number) => [count, 50] as const;
const trays = [tray(40), tray(42), tray(41), tray(38)];
const lots = [makeLot('leek'), makeLot('onion', 'onion', 'Allium cepa')];

/** Two lots, four trays of each, nothing wrong but that nobody sorted what did not come up. */
const sound: Trial = (() => {
  const parts = ['leek', 'onion'].map((lot) =>
    germinationTrial({ packet: trays, jar: [tray(45), tray(43), tray(46), tray(44)] }, {}, { lot }),
  );
  return germinationTrial(
    {},
    {
      varies: 'light',
      question: 'Does light help?',
      lots,
      outcomes: [makeOutcome({ matters: 10 })],
      sowings: parts.flatMap(({ sowings }) => sowings),
      counts: parts.flatMap(({ counts }) => counts),
    },
  );
})();

test('a sound trial has no caveat but that dead and dormant seeds were not told apart', () => {
  expect(ids(sound)).toEqual(['ungerminated-not-sorted', 'ungerminated-not-sorted']);
});

test('one tray of each of one lot, placed by hand, open, nothing fixed: what a first look has', () => {
  const trial = germinationTrial(
    { packet: [tray(20)], jar: [tray(22)] },
    {
      fixedBeforehand: null,
      sowing: { container: 'tray', assignment: 'by-hand', treated: 'unknown', block: null },
      scoring: { germinated: null, blind: 'no', days: [], counts: 'cumulative' },
    },
  );
  expect(ids(trial)).toEqual([
    'one-sowing',
    'not-randomised',
    'outcomes-not-fixed',
    'not-blind',
    'one-lot',
    'tested-straight-away',
    'ungerminated-not-sorted',
  ]);
});

test('single trays apart in everything are told of the tray, the day and the soak, not of place, block and scorer', () => {
  const trial = germinationTrial({ packet: [tray(20)], jar: [tray(22)] });
  const sowings = trial.sowings.map((sowing, index) => ({
    ...sowing,
    block: `block ${index}`,
    position: `shelf ${index}`,
    sown: `2026-04-0${index + 4}`,
    soakHours: index * 6,
  }));
  const counts = trial.counts.map((count, index) => ({ ...count, scorer: `person ${index}` }));
  const serious = caveatsOf({ ...trial, sowings, counts }, [resultOf({ ...trial, sowings, counts })])
    .filter(({ weight }) => weight === 'serious')
    .map(({ id }) => id);
  expect(serious).toEqual(['confounded-sowing-day', 'one-sowing', 'unequal-soak']);
});

test('serious first, then caution, then note; then by id, outcome, lot and treatment', () => {
  const trial = { ...sound, scoring: { ...sound.scoring, blind: 'no' as const }, fixedBeforehand: null };
  const results = [resultOf(trial), resultOf(trial, { outcome: 'early', day: 14 })];
  const told = caveatsOf(trial, results).map(({ id, outcome, lot }) => `${id} ${outcome} ${lot}`);
  expect(told).toEqual([
    'outcomes-not-fixed null null',
    'no-margin early null',
    'no-margin germination null',
    'not-blind null null',
    'ungerminated-not-sorted early leek',
    'ungerminated-not-sorted early onion',
    'ungerminated-not-sorted germination leek',
    'ungerminated-not-sorted germination onion',
  ]);
});

test('what every outcome has alike is told once, of the whole trial', () => {
  const trial = germinationTrial({ packet: [tray(20)], jar: [tray(22)] });
  const oneOf = (...results: readonly ReturnType<typeof resultOf>[]) =>
    caveatsOf(trial, results).filter(({ id }) => id === 'one-sowing');
  expect(oneOf(resultOf(trial))).toMatchObject([{ outcome: null, lot: 'leek', treatment: 'jar' }]);
  expect(oneOf(resultOf(trial), resultOf(trial, { outcome: 'early' }))).toMatchObject([{ outcome: null }]);
  const other = resultOf(trial, {
    outcome: 'early',
    leftOut: [{ sowing: 'leek-jar-1', reason: 'not-checked', what: null }],
  });
  expect(oneOf(resultOf(trial), other)).toMatchObject([{ outcome: 'early' }, { outcome: 'germination' }]);
});

test('the order of rows and of outcomes makes no difference', () => {
  const trial = { ...sound, scoring: { ...sound.scoring, blind: 'no' as const } };
  const reversed = { ...trial, sowings: trial.sowings.toReversed(), counts: trial.counts.toReversed() };
  const results = [resultOf(trial), resultOf(trial, { outcome: 'early' })];
  expect(caveatsOf(reversed, results.toReversed())).toEqual(caveatsOf(trial, results));
});

test('a trial that was not analysed claims nothing and needs no caveat', () => {
  expect(caveatsOf(sound, [])).toEqual([]);
});

test('sentences are left to the words', () => {
  for (const caveat of caveatsOf(sound, [resultOf(sound)])) expect(caveat.text).toBe('');
});

test('every id has a rule, and its rule gives only that id, in its weight', () => {
  expect(Object.keys(RULES)).toEqual(Object.keys(WEIGHTS));
  const trial = germinationTrial({ packet: [tray(1)], jar: [tray(2)] }, { fixedBeforehand: null, varies: 'dressing' });
  for (const [id, rule] of Object.entries(RULES)) {
    for (const caveat of rule(trial, [resultOf(trial)])) expect(caveat.id).toBe(id);
  }
});
