import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalQuantile } from '../../../src/statistics/distributions/normal.ts';
import { compareLines } from '../../../src/statistics/storage/compare-lines.ts';
import { fiellerLimits, type Line } from '../../../src/statistics/storage/fieller-limits.ts';
import { inverseSymmetric } from '../../../src/statistics/storage/inverse-symmetric.ts';
import { likelihoodRatioF } from '../../../src/statistics/storage/likelihood-ratio-f.ts';
import { probitFit, type ProbitFit } from '../../../src/statistics/storage/probit-fit.ts';
import reference from '../../reference/r/probit.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { r } from '../../support/r.ts';
import { rVector } from '../../support/r-vector.ts';

interface Series {
  readonly x: readonly number[];
  readonly count: readonly number[];
  readonly seeds: readonly number[];
}
const fitOf = ({ x, count, seeds }: Series): ProbitFit =>
  probitFit(x.map((at, index) => ({ x: [1, at], count: count[index] ?? NaN, seeds: seeds[index] ?? NaN }))) as ProbitFit; // prettier-ignore
const lineOf = ({ coefficients, covariance }: ProbitFit): Line => ({
  intercept: coefficients[0] ?? NaN,
  slope: coefficients[1] ?? NaN,
  covariance: [covariance[0]?.[0] ?? NaN, covariance[0]?.[1] ?? NaN, covariance[1]?.[1] ?? NaN],
});

test.each(reference.lines)('matches R glm and its Fieller limits: $name', (expected) => {
  const fit = fitOf(expected);
  const line = lineOf(fit);
  expectClose(line.intercept, expected.intercept, 1e-6);
  expectClose(line.slope, expected.slope, 1e-6);
  expectClose(line.covariance[0], expected.va, 1e-6);
  expectClose(line.covariance[1], expected.vab, 1e-6);
  expectClose(line.covariance[2], expected.vb, 1e-6);
  expectClose(fit.deviance, expected.deviance, 1e-6);
  expectClose(fit.pearson, expected.pearson, 1e-6);
  const limits = fiellerLimits(line, expected.quantile);
  expectClose(limits.estimate, expected.estimate, 1e-6);
  expectClose(limits.g, expected.g, 1e-6);
  if (expected.g < 1) {
    expectClose(limits.lower, expected.lower, 1e-6);
    expectClose(limits.upper, expected.upper, 1e-6);
  } else expect(limits).toMatchObject({ lower: null, upper: null });
});

test('the rotenone data give the LD50 that the literature gives', () => {
  // Finney (1971) after Martin (1942): log LD50 0.686 to 0.687, b about 4.2; from memory. He rounds to three places.
  const [rotenone] = reference.lines;
  const line = lineOf(fitOf(rotenone as Series));
  const { estimate } = fiellerLimits(line, normalQuantile(0.975));
  expect(Math.abs(estimate - 0.6865)).toBeLessThan(0.0015);
  expect(line.slope).toBeCloseTo(4.2, 1);
});

test.each(reference.nested)('lines compared as by the deviances of R, gap $gap', (expected) => {
  const units = expected.time.map((time, index) => ({ time, count: expected.count[index] ?? NaN, seeds: 100 }));
  const tests = compareLines([units.slice(0, 5), units.slice(5)], { used: 1.3, dfUsed: 7 });
  expect(Math.abs((tests?.slope.statistic ?? NaN) - (expected.slope - expected.full) / 1.3)).toBeLessThan(1e-6);
  expect(Math.abs((tests?.line.statistic ?? NaN) - (expected.line - expected.full) / 2 / 1.3)).toBeLessThan(1e-6);
  expect(tests?.slope.df).toEqual([1, 7]);
  expect(tests?.line.df).toEqual([2, 7]);
});

/** Series as growers have them: a few tests, a fall or none, one to four units a test. */
const series = fc
  .record({
    start: fc.double({ min: 0.6, max: 2.4, noNaN: true }),
    fall: fc.double({ min: -0.1, max: 0.8, noNaN: true }),
    tests: fc.integer({ min: 3, max: 6 }),
    units: fc.integer({ min: 1, max: 4 }),
    seeds: fc.integer({ min: 20, max: 100 }),
    luck: fc.array(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { minLength: 24, maxLength: 24 }),
  })
  .map(({ start, fall, tests, units, seeds, luck }) => {
    const rows = Array.from({ length: tests * units }, (_, index) => ({ time: Math.floor(index / units), index }));
    const share = ({ time, index }: { time: number; index: number }) =>
      1 / (1 + Math.exp(-1.7 * (start - fall * time + (luck[index] ?? 0))));
    return {
      x: rows.map(({ time }) => time),
      count: rows.map((row) => Math.round(seeds * share(row))),
      seeds: rows.map(() => seeds),
    };
  })
  .filter(({ x, count, seeds }) => {
    const inside = x.filter((_, index) => (count[index] ?? 0) > 0 && (count[index] ?? 0) < (seeds[index] ?? 0));
    return new Set(inside).size >= 2;
  });

test('random series match live R', async () => {
  const drawn = fc.sample(series, { seed: 20261125, numRuns: 150 });
  const lists = drawn.map(({ x, count, seeds }) => `list(${rVector(x)},${rVector(count)},${rVector(seeds)})`);
  const expected = await r(`unlist(lapply(list(${lists.join(',')}), function(s) {
    fit <- suppressWarnings(glm(cbind(s[[2]], s[[3]] - s[[2]]) ~ s[[1]], family = binomial("probit"), control = glm.control(1e-14, 200)))
    v <- vcov(fit)
    c(coef(fit), v[1, 1], v[1, 2], v[2, 2], deviance(fit), sum(residuals(fit, "pearson")^2))
  }))`);
  const found = drawn.flatMap((each) => {
    const fit = fitOf(each);
    const { intercept, slope, covariance } = lineOf(fit);
    return [intercept, slope, ...covariance, fit.deviance, fit.pearson];
  });
  expect(found).toHaveLength(expected.length);
  found.forEach((value, index) => {
    const wanted = expected[index] ?? NaN;
    expect(Math.abs(value - wanted), `${index}: ${value}, R ${wanted}`).toBeLessThan(1e-6 * Math.max(Math.abs(wanted), 0.01)); // prettier-ignore
  });
});

const fall: Series = { x: [0, 1, 2, 4], count: [48, 45, 36, 12], seeds: [50, 50, 50, 50] };

test('the order of units, the unit of time and splitting a unit change nothing', () => {
  const whole = lineOf(fitOf(fall));
  const turned = lineOf(fitOf({ x: [4, 2, 1, 0], count: [12, 36, 45, 48], seeds: [50, 50, 50, 50] }));
  expectClose(turned.slope, whole.slope);
  const inDays = lineOf(fitOf({ ...fall, x: fall.x.map((year) => 365.25 * year) }));
  expectClose(inDays.slope * 365.25, whole.slope);
  expectClose(fiellerLimits(inDays, 2).upper, 365.25 * (fiellerLimits(whole, 2).upper ?? NaN));
  const split = lineOf(fitOf({ x: [0, 0, 1, 2, 4], count: [30, 18, 45, 36, 12], seeds: [31, 19, 50, 50, 50] }));
  expectClose(split.slope, whole.slope);
  expectClose(split.covariance[2], whole.covariance[2]);
});

test('twice the seeds halve the variance', () => {
  const once = lineOf(fitOf(fall));
  const twice = lineOf(fitOf({ ...fall, count: fall.count.map((n) => 2 * n), seeds: fall.seeds.map((n) => 2 * n) }));
  expectClose(twice.intercept, once.intercept);
  expectClose(2 * twice.covariance[2], once.covariance[2]);
});

test('lines that are one line differ by nothing; swapped groups give the same', () => {
  const units = fall.x.map((time, index) => ({ time, count: fall.count[index] ?? 0, seeds: 50 }));
  const other = units.map((unit) => ({ ...unit, count: Math.max(0, unit.count - 2 * unit.time) }));
  const phi = { used: 2, dfUsed: 5 };
  const alike = compareLines([units, units], phi);
  expect(alike?.line.statistic).toBeLessThan(1e-9);
  expectClose(compareLines([units, other], phi)?.slope.p, compareLines([other, units], phi)?.slope.p ?? NaN, 1e-8);
});

test('one time cannot carry a line', () => {
  expect(fitOfOrNull({ x: [2, 2, 2], count: [40, 41, 39], seeds: [50, 50, 50] })).toBeNull();
});
const fitOfOrNull = (given: Series): ProbitFit | null => fitOf(given);

test('a matrix that tells nothing apart has no inverse', () => {
  const found = inverseSymmetric([
    [4, 2],
    [2, 3],
  ]);
  [0.375, -0.25, -0.25, 0.5].forEach((value, index) => expectClose(found?.flat()[index], value, 1e-15));
  expect(
    inverseSymmetric([
      [1, 2],
      [2, 4],
    ]),
  ).toBeNull();
});

test('limits are without bound where the slope is not told from none', () => {
  const line: Line = { intercept: 1.5, slope: -0.1, covariance: [0.04, -0.01, 0.01] };
  expect(fiellerLimits(line, 1.96)).toMatchObject({ estimate: 15, lower: null, upper: null });
  expect(fiellerLimits(line, 1.96).g).toBeGreaterThan(1);
});

test('what cannot be is refused', () => {
  expect(() => probitFit([])).toThrow('probitFit needs at least one row with one parameter');
  expect(() => probitFit([{ x: [1], count: 6, seeds: 5 }])).toThrow('probitFit needs a count out of a number of seeds, got 6 of 5'); // prettier-ignore
  expect(() => fiellerLimits({ intercept: 1, slope: 0, covariance: [1, 0, 1] }, 2)).toThrow('got slope 0');
  expect(() => likelihoodRatioF(1, 3, 1, { used: 1, dfUsed: 3 })).toThrow('got deviances 1 and 3, 1 saved');
});
