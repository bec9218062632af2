import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Trial } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { everythingSaid } from '../support/everything-said.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTrial } from '../support/make-trial.ts';

const LANGUAGES = [
  {
    language: 'en',
    cannotTell: /Cannot tell\./,
    claims: /came up (more|less) |were up (earlier|later)|alike for this purpose/,
  },
  {
    language: 'de',
    cannotTell: /Das lässt sich nicht sagen\./,
    claims: /(mehr|weniger) Samen auf[ :]|ging die Saat|gleich genug für/,
  },
] as const;
const DAYS = [4, 7, 14];

/** Trials of every make: few and many units, batches, blocks, gaps, mishaps, margins, whatever is recorded. */
const trials = fc
  .record({
    lots: fc.subarray(['leek', 'cress', 'onion'], { minLength: 1 }),
    units: fc.integer({ min: 1, max: 4 }),
    seeds: fc.constantFrom(10, 50, 100),
    chances: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 24, maxLength: 24 }),
    margin: fc.constantFrom(null, 5, 10),
    assignment: fc.constantFrom('random', 'random-in-blocks', 'alternating', 'by-hand', 'unknown'),
    treated: fc.constantFrom('each-sowing', 'in-batches', 'at-once', 'unknown'),
    blind: fc.constantFrom('yes', 'no', 'unknown'),
    fixedBeforehand: fc.constantFrom(null, '2026-04-01', '2026-05-01'),
    leftOut: fc.boolean(),
    blocks: fc.boolean(),
    batches: fc.boolean(),
    missed: fc.boolean(),
  })
  .map(({ lots, units, seeds, chances, margin, assignment, treated, blind, fixedBeforehand, ...has }): Trial => {
    const sowings = lots.flatMap((lot, l) =>
      ['packet', 'jar'].flatMap((treatment, t) =>
        Array.from({ length: units }, (_, u) =>
          makeSowing(`${lot}-${treatment}-${u + 1}`, treatment, {
            lot,
            seeds,
            block: has.blocks ? `b${u}` : null,
            batch: has.batches ? `${treatment}-${u % 2}` : null,
            position: `${t + 1}-${u + l + 1}`,
          }),
        ),
      ),
    );
    const counts = sowings.flatMap(({ id }, index) => {
      const final = Math.round((seeds * (chances[index] ?? 50)) / 100);
      return DAYS.map((day, at) => {
        const missed = has.missed && index === 1 && day === 14;
        return makeCount(id, day, missed ? null : Math.round((final * (at + 1)) / DAYS.length));
      });
    });
    const out = sowings.at(-1)?.id ?? '';
    return makeTrial({
      lots: lots.map((lot) => makeLot(lot, lot, lot === 'cress' ? 'Lepidium sativum' : 'Allium porrum')),
      outcomes: [
        makeOutcome({ matters: margin, pool: true }),
        makeOutcome({ id: 't50', measure: 't50', day: null, matters: 1, primary: false }),
        makeOutcome({ id: 'mgt', measure: 'mgt', day: null, primary: false }),
      ],
      sowing: { container: 'tray', assignment, treated, block: has.blocks ? 'shelf' : null },
      scoring: { germinated: null, blind, days: DAYS, counts: 'cumulative' },
      fixedBeforehand,
      sowings,
      counts,
      events: has.leftOut ? [{ day: 6, date: null, sowings: [out], what: 'dropped', action: 'left-out' }] : [],
      impression: 'Quicker, we thought.',
    });
  });

test.each(LANGUAGES)(
  '$language: whatever a trial is like, nothing said of it has a hole or a forbidden word',
  { timeout: 120_000 },
  ({ language }) => {
    const words = wordsFor(language);
    fc.assert(
      fc.property(trials, (trial) => {
        for (const text of everythingSaid(words, trial)) {
          expect(text, text).not.toMatch(
            /undefined|NaN|\bnull\b|Infinity|\[object|95.% (?:chance|Wahrscheinlichkeit)|signifi[ck]an|% (?:more|mehr)|[Bb]ewei[st]| {2}|\.\.|\(\)/,
          );
          // The statistic of a test keeps its sign; everything else says its direction in words.
          expect(text.replace(/\bt −\d/g, ''), text).not.toContain('−');
          expect(text.length).toBeGreaterThan(1);
        }
      }),
      { seed: 20261125, numRuns: 60 },
    );
  },
);

test.each(LANGUAGES)(
  '$language: a trial with one tray of each never gets a verdict in any sentence',
  { timeout: 120_000 },
  ({ language, cannotTell, claims }) => {
    const words = wordsFor(language);
    fc.assert(
      fc.property(trials, (trial) => {
        const analysis = publishedAnalysis(trial, words);
        for (const result of analysis.results) {
          for (const comparison of result.comparisons.filter(
            ({ units, lot }) => lot !== 'all' && units.treatment < 2,
          )) {
            const sentence = words.comparisonSentence(trial, analysis, result, comparison);
            expect(sentence).toMatch(cannotTell);
            expect(sentence).not.toMatch(claims);
            expect(words.verdict(result, comparison)).toEqual({
              words: words.ui['chart.cannotTell'],
              shape: 'question',
            });
          }
        }
      }),
      { seed: 20261125, numRuns: 30 },
    );
  },
);
