import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { appliesTo } from '../../../src/analysis/caveats/applies-to.ts';
import type { Sowing, Trial } from '../../../src/trial/trial.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTreatment, makeTrial } from '../../support/make-trial.ts';

const sowing = fc.record({
  lot: fc.constantFrom('leek', 'onion'),
  treatment: fc.constantFrom('packet', 'jar', 'tin'),
  seeds: fc.constantFrom(10, 25, 50, 100),
  batch: fc.constantFrom(null, 'b1', 'b2'),
  tray: fc.constantFrom(null, null, 't1', 't2'),
  block: fc.constantFrom(null, 'A', 'B', 'C'),
  position: fc.constantFrom(null, '1-1', '1-2', '2-1', '2-2', 'lower', 'upper'),
  sown: fc.constantFrom('2026-04-04', '2026-04-05'),
  soakHours: fc.constantFrom(null, 0, 6),
  /** Share up at each check; null: not checked. */
  course: fc.array(fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { freq: 6 }), { minLength: 3, maxLength: 3 }),
  scorer: fc.constantFrom(null, 'ann', 'bob'),
});

/** Any trial at all: whatever growers do, in counts that never fall. */
const anyTrial = fc
  .record({
    sowings: fc.array(sowing, { minLength: 1, maxLength: 14 }),
    assignment: fc.constantFrom('random' as const, 'random-in-blocks' as const, 'by-hand' as const),
    treated: fc.constantFrom('each-sowing' as const, 'at-once' as const, 'unknown' as const),
    leftOut: fc.nat({ max: 13 }),
  })
  .map(({ sowings: rows, assignment, treated, leftOut }): Trial => {
    const sowings = rows.map(({ course: _, scorer: __, treatment, ...row }, index): Sowing =>
      makeSowing(`s${index}`, treatment, row),
    );
    const counts = rows.flatMap(({ course, seeds, scorer }, index) => {
      const rising = course.map((share) => share).toSorted((a, b) => (a ?? 0) - (b ?? 0));
      return [5, 8, 14].map((day, check) => {
        const share = rising[check] ?? null;
        return makeCount(`s${index}`, day, share === null ? null : Math.floor(share * seeds), { scorer });
      });
    });
    return makeTrial({
      lots: [makeLot('leek'), makeLot('onion')],
      treatments: [makeTreatment('packet', { control: true }), makeTreatment('jar'), makeTreatment('tin')],
      sowing: { container: 'tray', assignment, treated, block: null },
      outcomes: [
        makeOutcome({ matters: 10 }),
        makeOutcome({ id: 't50', measure: 't50', day: null, primary: false }),
        makeOutcome({ id: 'rate', measure: 'maguire', day: null, primary: false }),
      ],
      events: [
        { day: 6, date: null, sowings: [`s${leftOut}`], what: 'dropped', action: 'left-out' },
        { day: 7, date: null, sowings: ['s0', 's1'], what: 'watered', action: 'care' },
      ],
      sowings,
      counts,
    });
  });

const trials = fc.sample(anyTrial, { seed: 20261125, numRuns: 150 });
const analyses = trials.map((trial) => analyse(trial));
const compared = analyses.flatMap(({ results, caveats }) =>
  results.flatMap((result) => result.comparisons.map((comparison) => ({ result, comparison, caveats }))),
);

test('evidence is plain finite data, whatever the trial', () => {
  for (const { caveats } of analyses) {
    expect(JSON.parse(JSON.stringify(caveats))).toEqual(caveats); // NaN, Infinity and undefined would not survive
  }
});

test('a comparison is capped by the heaviest caveat that applies to it', () => {
  for (const { result, comparison, caveats } of compared) {
    const weights = caveats.filter((caveat) => appliesTo(caveat, result, comparison)).map(({ weight }) => weight);
    const expected = weights.includes('serious') ? 'cause-unclear' : weights.includes('caution') ? 'probably' : 'none';
    expect(comparison.ceiling).toBe(expected);
    expect(comparison.ceilingFrom.length > 0).toBe(expected !== 'none');
  }
});

test('what has one unit on a side, or none, says so', () => {
  const single = compared.filter(({ comparison: { units } }) => Math.min(units.treatment, units.control) < 2);
  expect(single.length).toBeGreaterThan(100);
  for (const { result, comparison, caveats } of single) {
    const isOf = ({ outcome, lot }: (typeof caveats)[number]) => outcome === result.outcome && lot === comparison.lot;
    const nothing = caveats.some(
      (caveat) => isOf(caveat) && (caveat.id === 'nothing-came-up' || caveat.id === 'hardly-any'),
    );
    if (!nothing) expect(comparison.ceilingFrom).toContain('one-sowing');
  }
});

test('a group without an estimate always has a caveat that says why', () => {
  const reasons = ['half-before-first-check', 'nothing-came-up', 'no-seed-number', 'sowings-left-out', 'hardly-any'];
  const empty = analyses.flatMap(({ results, caveats }) =>
    results.flatMap(({ outcome, groups }) =>
      groups
        .filter(({ estimate }) => estimate === null)
        .map(({ lot, treatment }) => ({ outcome, lot, treatment, caveats })),
    ),
  );
  expect(empty.length).toBeGreaterThan(20);
  for (const { outcome, lot, treatment, caveats } of empty) {
    const about = caveats.filter(
      (caveat) =>
        caveat.outcome === outcome &&
        caveat.lot === lot &&
        (caveat.treatment === null || caveat.treatment === treatment || caveat.evidence.control === treatment),
    );
    const why = about.filter(({ id }) => reasons.includes(id));
    expect(why, `${outcome} of ${lot} ${treatment}`).not.toEqual([]);
  }
});

test('no caveat is told twice', () => {
  for (const { caveats } of analyses) {
    const told = caveats.map((caveat) => JSON.stringify(caveat));
    expect(new Set(told).size).toBe(told.length);
  }
});

test('the order of rows makes no difference', () => {
  for (const [index, trial] of trials.slice(0, 50).entries()) {
    const reversed = { ...trial, sowings: trial.sowings.toReversed(), counts: trial.counts.toReversed() };
    expect(analyse(reversed).caveats).toEqual(analyses[index]?.caveats);
  }
});
