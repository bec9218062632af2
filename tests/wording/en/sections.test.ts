import { expect, test } from 'vitest';
import type { Moisture } from '../../../src/analysis/analysis.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeAnalysis, makeGroup, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeOutcome, makeTrial } from '../../support/make-trial.ts';
import { told } from '../../support/tell.ts';

const words = wordsFor('en');
const limits = (trial: Parameters<typeof words.cannotTell>[0]) =>
  words.cannotTell(trial, publishedAnalysis(trial, words)).join('\n');

test('what a trial cannot tell', () => {
  const one = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { outcomes: [makeOutcome()] });
  expect(limits(one)).toMatchInlineSnapshot(`
    "Whether the treatments differ at all: with one tray of a kind, ordinary luck cannot be told from the treatment.
    How well the seed keeps: it was sown straight after the treatment.
    Whether seed that did not come up was dead or only resting: nobody looked.
    What becomes of the plants: nothing was recorded after day 14.
    How the seed would do in open ground, in cold or crusted soil.
    How other seed would do: one lot is not every lot, one season and one place are not all."
  `);
  const clear = germinationTrial(
    {
      packet: [
        [30, 50],
        [31, 50],
        [29, 50],
        [32, 50],
      ],
      jar: [
        [44, 50],
        [45, 50],
        [43, 50],
        [44, 50],
      ],
    },
    {
      outcomes: [makeOutcome({ matters: 10 })],
      sowing: { container: 'a row', assignment: 'random', treated: 'each-sowing', block: null },
    },
  );
  expect(limits(clear)).toMatchInlineSnapshot(`
    "How well the seed keeps: it was sown straight after the treatment.
    Whether seed that did not come up was dead or only resting: nobody looked.
    Why: it shows that the seed differed, not by what means.
    What becomes of the plants: nothing was recorded after day 14.
    How the seed would do indoors, or in other soil and weather.
    How other seed would do: one lot is not every lot, one season and one place are not all."
  `);
  const unclear = germinationTrial(
    {
      packet: [
        [40, 50],
        [30, 50],
        [45, 50],
      ],
      jar: [
        [42, 50],
        [38, 50],
        [47, 50],
      ],
    },
    {
      outcomes: [makeOutcome()],
    },
  );
  expect(limits(unclear)).toMatchInlineSnapshot(`
    "Small differences: of two kinds 38 per 100 apart, a trial like this shows the difference about 4 times in 5; of smaller ones, less often.
    Whether the treatments are alike: no smallest difference that matters was set, so there is nothing to measure likeness by.
    How well the seed keeps: it was sown straight after the treatment.
    Whether seed that did not come up was dead or only resting: nobody looked.
    What becomes of the plants: nothing was recorded after day 14.
    How the seed would do in open ground, in cold or crusted soil.
    How other seed would do: one lot is not every lot, one season and one place are not all."
  `);
  expect(limits({ ...unclear, status: 'growing' })).toBe(
    'Anything about the treatments: nothing has been compared yet.',
  );
});

test('an impression stands beside the counts', () => {
  const trial = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { impression: ' The jar seemed quicker. ' });
  const [row] = words.impression(trial, publishedAnalysis(trial, words));
  expect(row).toMatchInlineSnapshot(`
    {
      "counts": "The counts: Paper packet: 80 of 100 (20 of 25 seeds, 1 tray; by seed luck alone it fits with 61 to 91). Sealed jar: 88 of 100 (22 of 25 seeds, 1 tray; by seed luck alone it fits with 70 to 96).",
      "impression": "The grower’s impression, not counted: “The jar seemed quicker.”",
      "lot": null,
    }
  `);
  expect(words.impression({ ...trial, impression: null }, makeAnalysis())).toEqual([]);
});

const lost: Moisture = {
  lot: 'leek',
  treatment: 'jar',
  waterLost: 4.1,
  moistureBefore: null,
  moistureAfter: null,
  waterLostRange: { lower: 2.74, upper: 5.41 },
  moistureAfterRange: null,
  batch: null,
  repeat: null,
};
const weighing = (mass: number) => ({
  lot: 'leek',
  treatment: 'jar',
  stage: 'after' as const,
  mass,
  container: null,
  repeat: null,
  scaleStep: 1,
  batch: null,
  date: null,
  line: 2,
});

test('water lost, with what the steps of the scale allow', () => {
  const trial = makeTrial({ weighings: [weighing(73), weighing(70)] });
  const said = (...moisture: Moisture[]) => words.moisture(trial, makeAnalysis({ moisture })).join('\n');
  expect(said(lost)).toMatchInlineSnapshot(
    `"Sealed jar seed lost 4.1 % of its mass. Scale steps of 1 g allow 2.7 to 5.5 %. Moisture at the start was not measured, so how dry it is now is not known."`,
  );
  expect(said({ ...lost, waterLostRange: null })).toMatchInlineSnapshot(
    `"Sealed jar seed lost 4.1 % of its mass. The step of the scale was not given, so how exact that is is not known. Moisture at the start was not measured, so how dry it is now is not known."`,
  );
  expect(said(lost, { ...lost, waterLost: 3.2, waterLostRange: { lower: 1.84, upper: 4.56 } })).toMatchInlineSnapshot(
    `"Sealed jar seed lost 3.2 to 4.1 % of its mass in 2 weighings. Scale steps of 1 g allow 1.8 to 5.5 %. Moisture at the start was not measured, so how dry it is now is not known."`,
  );
  expect(
    said({ ...lost, moistureBefore: 9.5, moistureAfter: 5.63, moistureAfterRange: { lower: 4.31, upper: 6.98 } }),
  ).toMatchInlineSnapshot(
    `"Sealed jar seed lost 4.1 % of its mass. Scale steps of 1 g allow 2.7 to 5.5 %. Its moisture afterwards was 5.6 %, from 9.5 % at the start (of its whole mass; the scale allows 4.3 to 7.0 %)."`,
  );
  expect(said({ ...lost, waterLost: 0.2, waterLostRange: { lower: -1.2, upper: 1.6 } })).toMatchInlineSnapshot(
    `"Sealed jar seed lost 0.2 % of its mass. Scale steps of 1 g allow anything from 1.2 % gained to 1.6 % lost. Moisture at the start was not measured, so how dry it is now is not known."`,
  );
  expect(said({ ...lost, waterLost: -0.4, waterLostRange: { lower: -0.6, upper: -0.2 } })).toMatchInlineSnapshot(
    `"Sealed jar seed gained 0.4 % of its mass. Scale steps of 1 g allow a gain of 0.2 to 0.6 %. Moisture at the start was not measured, so how dry it is now is not known."`,
  );
  expect(
    said({ ...lost, treatment: null, waterLost: null, moistureBefore: 9.5, waterLostRange: null }),
  ).toMatchInlineSnapshot(`"The seed as received had 9.5 % moisture."`);
});

test('what was left out, and the finding with it in', () => {
  const trial = germinationTrial(
    {
      packet: [
        [40, 50],
        [41, 50],
        [39, 50],
      ],
      jar: [
        [45, 50],
        [48, 50],
        [46, 50],
        [2, 50],
      ],
    },
    {
      outcomes: [makeOutcome({ matters: 10 })],
      events: [{ day: 5, date: null, sowings: ['leek-jar-4'], what: 'knocked over on day 5', action: 'left-out' }],
    },
  );
  const { results } = publishedAnalysis(trial, words);
  const [result] = results;
  const [comparison] = result?.comparisons ?? [];
  if (!result || !comparison) throw new Error('the trial has no comparison');
  expect(words.leftOut(trial, result, comparison)).toMatchInlineSnapshot(`
    [
      "Tray leek-jar-4 (knocked over on day 5) was left out.",
      "With it in: just under 10 fewer per 100 (52 fewer to 42 more). The finding changes to “not settled”.",
    ]
  `);
  const { trial: whole, result: none, comparison: nothing } = told({ estimate: 1, lower: -4, upper: 6 });
  expect(words.leftOut(whole, none, nothing)).toEqual([]);
});

test('a change from the plan, a sentence each', () => {
  const changes = [
    { what: 'outcomes.germination.day', planned: '14', done: '15' },
    { what: 'outcomes.germination.day', planned: 'cress 6, leek 14', done: '14' },
    { what: 'outcomes.germination.matters', planned: '10', done: null },
    { what: 'outcomes.height', planned: 'height', done: null },
    { what: 'treatments.tin', planned: null, done: 'Tin' },
    { what: 'sowings.s07.left-out', planned: null, done: 'dropped while moving' },
    { what: 'sowing.assignment', planned: 'random', done: 'by-hand' },
    { what: 'question', planned: 'Old?', done: 'New?' },
    { what: 'digest', planned: 'a', done: 'b' },
    { what: 'key_sha256', planned: 'a', done: 'b' },
  ];
  expect(words.planChanges(makeAnalysis({ plan: { fixed: '2026-04-01', changes } })).join('\n')).toMatchInlineSnapshot(`
    "The plan said day 14; the count is of day 15.
    The day of outcome germination: the plan said “cress 6, leek 14”; now it is “14”.
    The smallest difference that matters of outcome germination: the plan said “10”; now it is nothing.
    The outcome height of the plan was dropped.
    The treatment Tin was added; the plan did not have it.
    s07 was planned and left out: dropped while moving.
    The way of placing: the plan said “random”; now it is “by-hand”.
    The question: the plan said “Old?”; now it is “New?”.
    The plan file was changed after it had been fixed.
    The key is not the one that was sealed with the plan."
  `);
});

test('the published analysis carries the sentences and keeps the order of its keys', () => {
  const trial = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] });
  const analysis = publishedAnalysis(trial, 'en');
  expect(analysis.caveats.length).toBeGreaterThan(3);
  expect(analysis.caveats.every(({ text }) => text.length > 20)).toBe(true);
  expect(Object.keys(analysis.caveats[0] ?? {})).toEqual([
    'id',
    'weight',
    'text',
    'outcome',
    'lot',
    'treatment',
    'evidence',
  ]);
  expect(analysis).toEqual(publishedAnalysis(trial, words));
});

test('in short: one finding a comparison of the primary outcome, pooled ones first', () => {
  const { trial, analysis, result, comparison } = told({ estimate: 4, lower: -9, upper: 17 });
  const pooled = { ...comparison, lot: 'all', lots: ['leek', 'cress'] };
  const both = { ...result, comparisons: [comparison, pooled] };
  const other = { ...result, outcome: 'height', primary: false };
  const findings = words.inShort(trial, { ...analysis, results: [other, both] });
  expect(findings.map(({ comparison: { lot } }) => lot)).toEqual(['all', 'leek']);
  expect(findings[0]?.mark).toEqual({ words: 'not settled', shape: 'open' });
  expect(words.inShort(trial, { ...analysis, results: [] })).toEqual([]);
});

test('a storage series test by test', () => {
  const trial = makeTrial({ storage: { started: '2024-10-01', tests: [0, 1], left: {} } });
  const at = (stored: number, packet: number, jar: number) => [
    makeGroup('packet', { stored, estimate: packet, unit: 'batch' }),
    makeGroup('jar', { stored, estimate: jar, unit: 'batch' }),
  ];
  const groups = [...at(0, 95, 95), ...at(0.5, 93.5, 94), ...at(1, 84.2, 89.9)];
  expect(words.storageSeries(trial, makeAnalysis({ results: [makeResult({ groups })] })).join('\n'))
    .toMatchInlineSnapshot(`
    "At the start: Paper packet 95 of 100 and Sealed jar 95 of 100 (4 and 4 batches).
    After 6 months: Paper packet 94 of 100 and Sealed jar 94 of 100 (4 and 4 batches).
    After 1 year: Paper packet 84 of 100 and Sealed jar 90 of 100 (4 and 4 batches).
    3 test dates; no forecast is made."
  `);
  expect(words.storageSeries(trial, makeAnalysis())).toEqual([]);
});
