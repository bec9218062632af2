import { expect, test } from 'vitest';
import { coefficientOfVelocity } from '../../../src/statistics/times/coefficient-of-velocity.ts';
import { germinationSynchrony } from '../../../src/statistics/times/germination-synchrony.ts';
import { germinationUncertainty } from '../../../src/statistics/times/germination-uncertainty.ts';
import { maguireRate } from '../../../src/statistics/times/maguire-rate.ts';
import { meanGerminationTime } from '../../../src/statistics/times/mean-germination-time.ts';
import { shareBracket } from '../../../src/statistics/times/share-bracket.ts';
import { timeToShare } from '../../../src/statistics/times/time-to-share.ts';
import reference from '../../reference/r/times.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { expectCloseOrNull } from '../../support/close-or-null.ts';

test.each(reference.times.map((expected, index) => ({ index, ...expected })))('case $index matches R', (expected) => {
  const { checks, sown } = expected;
  expectCloseOrNull(timeToShare(checks, 0.1), expected.t10);
  expectCloseOrNull(timeToShare(checks, 0.25), expected.t25);
  expectCloseOrNull(timeToShare(checks, 0.5), expected.t50);
  expectCloseOrNull(timeToShare(checks, 0.75), expected.t75);
  expectCloseOrNull(timeToShare(checks, 0.9), expected.t90);
  expect(shareBracket(checks, 0.5)).toEqual(expected.bracket);
  expectCloseOrNull(meanGerminationTime(checks), expected.mgt);
  expectCloseOrNull(coefficientOfVelocity(checks), expected.cvg);
  expectClose(maguireRate(checks, sown), expected.maguire);
  expectCloseOrNull(germinationUncertainty(checks), expected.uncertainty);
  expectCloseOrNull(germinationSynchrony(checks), expected.synchrony);
});

// Fixtures A, B, C of sources.md section 4: constructed, values by R with the definitions of the authors named in the code.
const fixtures = {
  A: { days: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], newly: [0, 0, 3, 11, 17, 9, 4, 2, 0, 1], sown: 50 },
  B: { days: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], newly: [0, 0, 0, 4, 9, 12, 8, 5, 3, 1], sown: 50 },
  C: { days: [2, 4, 7, 10, 14], newly: [5, 30, 40, 15, 2], sown: 100 },
};
test.each([
  ['A', 4.55882, 3.79545, 5.47222, 5.23404, 19.10569, 9.57143, 2.34555, 0.21924],
  ['B', 5.66667, 4.72222, 6.8125, 6.33333, 15.78947, 7.00119, 2.53724, 0.17305],
  ['C', 4.825, 3.2, 6.55, 6.3913, 15.64626, 17.35714, 1.82468, 0.31796],
] as const)('fixture %s', (name, t50, t25, t75, mgt, cvg, maguire, uncertainty, synchrony) => {
  const { days, newly, sown } = fixtures[name];
  const checks = days.map((day, index) => ({ day, newly: newly[index] ?? NaN }));
  const close = (actual: number | null, expected: number) =>
    expect(Math.abs((actual ?? NaN) - expected)).toBeLessThan(6e-6);
  close(timeToShare(checks, 0.5), t50);
  close(timeToShare(checks, 0.25), t25);
  close(timeToShare(checks, 0.75), t75);
  close(meanGerminationTime(checks), mgt);
  close(coefficientOfVelocity(checks), cvg);
  close((maguireRate(checks, sown) * sown) / 100, maguire); // published for the seeds sown, not per 100
  close(germinationUncertainty(checks), uncertainty);
  close(germinationSynchrony(checks), synchrony);
});

const checks = [
  { day: 3, newly: 4 },
  { day: 5, newly: 10 },
  { day: 8, newly: 6 },
];

test('a check on the day of sowing changes nothing', () => {
  const early = [{ day: 0, newly: 0 }, ...checks];
  expect(timeToShare(early, 0.5)).toBe(timeToShare(checks, 0.5));
  expect(shareBracket(early, 0.1)).toEqual({ after: 0, by: 3 });
  expect(timeToShare(early, 0.1)).toBeNull();
  expect(maguireRate(early, 20)).toBe(maguireRate(checks, 20));
});

test('the time lies in its bracket', () => {
  for (const share of [0.25, 0.5, 0.75, 1]) {
    const { after = NaN, by = NaN } = shareBracket(checks, share) ?? {};
    const time = timeToShare(checks, share) ?? NaN;
    expect(time).toBeGreaterThan(after);
    expect(time).toBeLessThanOrEqual(by);
  }
});

test('a day later is a day later; half-days are as good as days', () => {
  const later = checks.map(({ day, newly }) => ({ day: day + 1, newly }));
  expectClose(timeToShare(later, 0.5), (timeToShare(checks, 0.5) ?? NaN) + 1);
  expectClose(meanGerminationTime(later), (meanGerminationTime(checks) ?? NaN) + 1);
  const doubled = checks.map(({ day, newly }) => ({ day: 2 * day, newly }));
  expectClose(timeToShare(doubled, 0.5), 2 * (timeToShare(checks, 0.5) ?? NaN));
  expectClose(maguireRate(doubled, 25), maguireRate(checks, 25) / 2);
});

test('twice the seeds, the same speed', () => {
  const twice = checks.map(({ day, newly }) => ({ day, newly: 2 * newly }));
  expectClose(timeToShare(twice, 0.5), timeToShare(checks, 0.5) ?? NaN);
  expectClose(maguireRate(twice, 50), maguireRate(checks, 25));
  expectClose(germinationUncertainty(twice), germinationUncertainty(checks) ?? NaN);
});

test('all at one check: no uncertainty, full synchrony', () => {
  const once = [
    { day: 3, newly: 0 },
    { day: 5, newly: 12 },
  ];
  expect(germinationUncertainty(once)).toBe(0);
  expect(germinationSynchrony(once)).toBe(1);
});

test('no check at all is nothing germinated', () => {
  expect([timeToShare([], 0.5), shareBracket([], 0.5), meanGerminationTime([]), maguireRate([], 10)]).toEqual([
    null,
    null,
    null,
    0,
  ]);
});

test('refuses days that do not rise, germination before sowing, negative counts, shares beyond 1', () => {
  const bad = (...rows: [number, number][]) => rows.map(([day, newly]) => ({ day, newly }));
  expect(() => timeToShare(bad([3, 1], [3, 1]), 0.5)).toThrow(
    'timeToShare needs checks on rising days after sowing with counts of 0 or more, got 1 on day 3 after day 3',
  );
  expect(() => maguireRate(bad([0, 1]), 10)).toThrow('got 1 on day 0');
  expect(() => meanGerminationTime(bad([2, -1]))).toThrow('got -1 on day 2');
  expect(() => germinationUncertainty(bad([2, NaN]))).toThrow(RangeError);
  expect(() => timeToShare(checks, 1.2)).toThrow('got 1.2');
  expect(() => shareBracket(checks, 0)).toThrow('got 0');
  expect(() => maguireRate(checks, 0)).toThrow('got 0');
});
