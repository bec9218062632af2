import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import { survivalCurve } from '../../../src/analysis/storage/survival-curve.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { expectClose } from '../../support/close.ts';
import { makeOutcome, makeTreatment } from '../../support/make-trial.ts';
import { r } from '../../support/r.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const keeping = (trial: Trial): Result => analyse(trial).results.find(({ measure }) => measure === 'storage') as Result;
const lineOf = (trial: Trial, treatment: string) => keeping(trial).storage?.find((line) => line.treatment === treatment); // prettier-ignore
const only = { treatments: [makeTreatment('jar', { control: true })] };

const start = { 0: [[46, 50], [48, 50], [45, 50]] } as const; // prettier-ignore
const packet = {
  1: [[41, 50], [44, 50]],
  2: [[33, 50], [30, 50]],
  4: [[15, 50], [18, 50]],
} as const; // prettier-ignore
const jar = {
  1: [[44, 50], [46, 50]],
  2: [[43, 50], [41, 50]],
  4: [[37, 50], [34, 50]],
} as const; // prettier-ignore
const series = storageTrial({ start, packet, jar });

test('a constructed series gives the line and half-life that R gives', () => {
  // 200 seeds a test: Ki 2.08765052, slope −0.02891529 a day, half-life 72.19885 days (R glm; tests/reference/r/probit.R).
  const days = { 0: 194, 20: 187, 40: 168, 60: 131, 80: 82, 100: 39 };
  const counts = Object.fromEntries(Object.entries(days).map(([day, count]) => [Number(day) / 365.25, [[count, 200] as const]])); // prettier-ignore
  const line = lineOf(storageTrial({ jar: counts }, only), 'jar');
  expectClose(line?.ki, 2.08765052, 1e-7);
  expectClose(line?.slope, -0.02891529 * 365.25, 1e-6);
  expectClose(line?.sigma, 34.58378 / 365.25, 1e-6);
  expectClose(line?.halfLife?.estimate, 72.19885 / 365.25, 1e-6);
  expect(line?.dispersion).toMatchObject({ df: 4, used: 1, dfUsed: 5 });
  expectClose(line?.dispersion?.phi, 2.388433 / 4, 1e-6);
});

test('lines, limits and the comparison of lines agree with live R', async () => {
  const [ki = NaN, slope = NaN, lower = NaN, upper = NaN, f1 = NaN, p1 = NaN, f2 = NaN, p2 = NaN] = await r(`
    time <- c(0, 0, 0, 1, 1, 2, 2, 4, 4)
    x <- c(46, 48, 45, 41, 44, 33, 30, 15, 18); x2 <- c(46, 48, 45, 44, 46, 43, 41, 37, 34)
    probit <- function(f, d) glm(f, family = binomial("probit"), data = d, control = glm.control(1e-14, 100))
    pearson <- function(fit) sum(residuals(fit, "pearson")^2)
    one <- probit(cbind(x, 50 - x) ~ time, data.frame(x, time))
    phi <- max(1, (pearson(one) + 2) / 8)
    b <- coef(one); v <- vcov(one) * phi; q <- qt(.975, 8)
    ends <- sort(Re(polyroot(c(b[1]^2 - q^2 * v[1, 1], 2 * (b[1] * b[2] - q^2 * v[1, 2]), b[2]^2 - q^2 * v[2, 2]))))
    both <- data.frame(y = c(x, x2), time = rep(time, 2), kind = rep(c("a", "b"), each = 9))
    full <- probit(cbind(y, 50 - y) ~ kind * time, both)
    phi <- max(1, (pearson(full) + 2) / (15 - 4 + 1)) # 15 sowings: the three at the start stand in both lines
    slope <- (deviance(probit(cbind(y, 50 - y) ~ kind + time, both)) - deviance(full)) / phi
    line <- (deviance(probit(cbind(y, 50 - y) ~ time, both)) - deviance(full)) / 2 / phi
    c(b, ends, slope, pf(slope, 1, 12, lower.tail = FALSE), line, pf(line, 2, 12, lower.tail = FALSE))`);
  const line = lineOf(series, 'packet');
  expectClose(line?.ki, ki, 1e-6);
  expectClose(line?.slope, slope, 1e-6);
  expectClose(line?.halfLife?.lower, lower, 1e-6);
  expectClose(line?.halfLife?.upper, upper, 1e-6);
  const [slopes, lines] = keeping(series).lines ?? [];
  expect([slopes?.test, lines?.test]).toEqual(['common-slope', 'common-line']);
  expect([slopes?.df, lines?.df]).toEqual([[1, 12], [2, 12]]); // prettier-ignore
  expectClose(slopes?.statistic, f1, 1e-6);
  expectClose(slopes?.p, p1, 1e-6);
  expectClose(lines?.statistic, f2, 1e-6);
  expectClose(lines?.p, p2, 1e-6);
});

test('what cannot be said is null, with the reason', () => {
  const told = (years: Readonly<Record<number, number>>, jars = 2) => {
    const line = lineOf(storageTrial({ jar: alike(years, jars) }, only), 'jar');
    return { reason: line?.reason, line: line?.ki !== null, sigma: line?.sigma !== null, half: line?.halfLife };
  };
  const none = { line: false, sigma: false, half: null };
  const fitted = { line: true, sigma: true, half: null };
  expect(told({ 0: 45, 5: 10 })).toEqual({ reason: 'too-few-tests', ...none });
  expect(told({ 0: 50, 1: 48, 2: 0 })).toEqual({ reason: 'too-steep', ...none });
  expect(told({ 0: 50, 1: 50, 2: 48 })).toEqual({ reason: 'hardly-a-fall', ...none });
  expect(told({ 0: 50, 1: 50, 2: 50 })).toEqual({ reason: 'no-fall', ...none });
  expect(told({ 0: 0, 1: 0, 2: 0 })).toEqual({ reason: 'nothing-came-up', ...none });
  expect(told({ 0: 40, 1: 41, 2: 44 })).toEqual({ reason: 'no-fall', ...fitted, sigma: false });
  expect(told({ 0: 46, 1: 44, 2: 40 })).toEqual({ reason: 'not-yet', ...fitted });
  expect(told({ 1: 20, 2: 12, 3: 5 })).toEqual({ reason: 'before-first', ...fitted });
  expect(told({ 0: 30, 1: 18, 2: 29, 3: 24 }, 1)).toEqual({ reason: 'unbounded', ...fitted });
  const caveat = analyse(storageTrial({ jar: alike({ 0: 45, 5: 10 }) }, only)).caveats.find(({ id }) => id === 'no-half-life'); // prettier-ignore
  expect(caveat).toMatchObject({ weight: 'note', outcome: 'keeping', treatment: 'jar' });
});

test('the jar is the unit: many trays from one jar a test are a first look', () => {
  const trays = (years: Readonly<Record<number, number>>) => alike(years, 6);
  const trial = storageTrial({ start: alike({ 0: 46 }), packet: trays({ 1: 42, 2: 31, 4: 16 }), jar: trays({ 1: 45, 2: 42, 4: 36 }) }); // prettier-ignore
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, batch: sowing.treatment && `${sowing.treatment} ${sowing.stored}` })); // prettier-ignore
  const { results, caveats } = analyse({ ...trial, sowings });
  const result = results.find(({ measure }) => measure === 'storage');
  expect(result?.groups.filter(({ stored }) => stored !== 0).map(({ units, sowings: of }) => [units, of])).toEqual(
    Array.from({ length: 6 }, () => [1, 6]),
  );
  expect(result?.storage?.map(({ units }) => units)).toEqual([5, 5]);
  expect(result?.lines?.map(({ statistic, p }) => [statistic, p])).toEqual([[null, null], [null, null]]); // prettier-ignore
  expect(result?.lines?.map(({ ceiling }) => ceiling)).toEqual(['cause-unclear', 'cause-unclear']);
  const jars = caveats.filter(({ id }) => id === 'one-batch');
  expect(jars.length).toBeGreaterThan(0);
  expect(jars.every(({ weight }) => weight === 'serious')).toBe(true);
});

test('a single sowing of a kind at a test is one jar too, and jars that nobody told apart compare no lines', () => {
  const one = analyse(storageTrial({ start, packet: alike({ 1: 42, 2: 31, 4: 16 }, 1), jar }));
  expect(one.caveats.some(({ id, treatment }) => id === 'one-batch' && treatment === 'packet')).toBe(true);
  const unnamed = { ...series, sowings: series.sowings.map((sowing) => ({ ...sowing, batch: null })) };
  const tested = (treated: Trial['sowing']['treated']) =>
    keeping({ ...unnamed, sowing: { ...unnamed.sowing, treated } }).lines?.every(({ p }) => p !== null);
  expect(tested('each-sowing')).toBe(true);
  expect(tested('unknown')).toBe(false);
  expect(tested('in-batches')).toBe(false);
});

test('the order of rows changes nothing; more seeds narrow the limits', () => {
  const turned = { ...series, sowings: series.sowings.toReversed(), counts: series.counts.toReversed() };
  expect(JSON.stringify(keeping(turned))).toBe(JSON.stringify(keeping(series)));
  const width = (trial: Trial) => {
    const half = lineOf(trial, 'packet')?.halfLife;
    return (half?.upper ?? NaN) - (half?.lower ?? NaN);
  };
  const tenfold = {
    ...series,
    sowings: series.sowings.map((sowing) => ({ ...sowing, seeds: 10 * (sowing.seeds ?? 0) })),
    counts: series.counts.map((count) => ({ ...count, germinated: 10 * (count.germinated ?? 0) })),
  };
  // Jars that differ as before are further from seed luck, so the limits narrow by less than the square root of ten.
  expect(width(tenfold)).toBeLessThan(width(series));
  expectClose(lineOf(tenfold, 'packet')?.ki, lineOf(series, 'packet')?.ki ?? NaN, 1e-9);
});

test('a series is also compared test by test, by an outcome of its own where none is listed', () => {
  const outcomes = [makeOutcome({ id: 'keeping', measure: 'storage', matters: 10 })];
  const { results } = analyse({ ...series, outcomes });
  expect(results.map(({ outcome, measure, primary }) => [outcome, measure, primary])).toEqual([
    ['keeping', 'storage', true],
    ['keeping-tests', 'germination', false],
  ]);
  expect(results[1]?.comparisons.map(({ stored, equivalence }) => [stored, equivalence?.fixedBeforehand])).toEqual([
    [1, true],
    [2, true],
    [4, true],
  ]);
  const listed = [...outcomes, makeOutcome({ id: 'germination', primary: false })];
  expect(analyse({ ...series, outcomes: listed }).results.map(({ outcome }) => outcome)).toEqual(['keeping', 'germination']); // prettier-ignore
});

test('a result has its lines in place of comparisons, its keys in one order', () => {
  const result = keeping(series);
  expect(result.comparisons).toEqual([]);
  expect(Object.keys(result)).toEqual(['outcome', 'measure', 'primary', 'day', 'unit', 'groups', 'storage', 'lines', 'comparisons', 'days', 'column', 'matters', 'values', 'leftOut', 'overall']); // prettier-ignore
  expect(Object.keys(result.storage?.[0] ?? {}).slice(0, 7)).toEqual(['lot', 'treatment', 'ki', 'slope', 'sigma', 'halfLife', 'dispersion']); // prettier-ignore
});

test('the line is drawn from the first to the last test and no further', () => {
  const line = lineOf(series, 'packet');
  const curve = line ? survivalCurve(line) : [];
  expect([curve[0]?.stored, curve.at(-1)?.stored]).toEqual([0, 4]);
  expect(curve.every(({ percent }, index) => percent < (curve[index - 1]?.percent ?? 100))).toBe(true);
  expect(survivalCurve({ ...(line as NonNullable<typeof line>), ki: null })).toEqual([]);
});
