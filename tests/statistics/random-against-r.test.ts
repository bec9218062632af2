import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chiSquareUpper } from '../../src/statistics/distributions/chi-square.ts';
import { fQuantile, fUpper } from '../../src/statistics/distributions/f.ts';
import { noncentralTCdf } from '../../src/statistics/distributions/noncentral-t.ts';
import { normalQuantile } from '../../src/statistics/distributions/normal.ts';
import { tQuantile, tUpper } from '../../src/statistics/distributions/t.ts';
import { ncpForPower, twoSidedPower } from '../../src/statistics/distributions/two-sided-power.ts';
import { hedgesG } from '../../src/statistics/hedges-g.ts';
import { hodgesLehmann } from '../../src/statistics/hodges-lehmann.ts';
import { holm } from '../../src/statistics/holm.ts';
import { intraclassCorrelation } from '../../src/statistics/intraclass-correlation.ts';
import { oneWayF } from '../../src/statistics/one-way-f.ts';
import { pairedT } from '../../src/statistics/paired-t.ts';
import { pearsonDispersion } from '../../src/statistics/pearson-dispersion.ts';
import { pearsonTwoByTwo } from '../../src/statistics/pearson-two-by-two.ts';
import { permuteMeans } from '../../src/statistics/permutation/permute-means.ts';
import { permuteProportions } from '../../src/statistics/permutation/permute-proportions.ts';
import { signFlipTest } from '../../src/statistics/permutation/sign-flip-test.ts';
import { pooledMeans } from '../../src/statistics/pooled-means.ts';
import { welchT } from '../../src/statistics/welch-t.ts';
import { wilsonInterval } from '../../src/statistics/wilson-interval.ts';
import { expectClose } from '../support/close.ts';
import { r } from '../support/r.ts';
import { rVector } from '../support/r-vector.ts';

/** Random data with a fixed seed; one R call a statistic. `-99` in an answer of R stands for null. */
const draw = <T>(arbitrary: fc.Arbitrary<T>, numRuns: number): T[] => fc.sample(arbitrary, { seed: 20261125, numRuns });
const list = (rows: readonly (readonly number[])[]) => `list(${rows.map(rVector).join(',')})`;
const column = <T>(rows: readonly T[], value: (row: T) => number) => rVector(rows.map(value));

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
/** Readings as growers take them: one decimal, so that ties happen. */
const readings = (minLength: number, maxLength: number) =>
  fc
    .array(
      fc.integer({ min: -50, max: 400 }).map((tenths) => tenths / 10),
      { minLength, maxLength },
    )
    .filter((values) => minLength < 2 || new Set(values).size > 1);
const unit = fc
  .integer({ min: 1, max: 60 })
  .chain((seeds) => fc.record({ count: fc.integer({ min: 0, max: seeds }), seeds: fc.constant(seeds) }));

test('distributions (qf of R loses digits in its lower tail)', async () => {
  const rows = draw(fc.record({ x: real(0.001, 60), a: real(0.5, 200), b: real(0.5, 200), p: real(0.2, 0.999) }), 500);
  const x = column(rows, (row) => row.x);
  const a = column(rows, (row) => row.a);
  const b = column(rows, (row) => row.b);
  const p = column(rows, (row) => row.p);
  const expected = await r(`x <- ${x}; a <- ${a}; b <- ${b}; p <- ${p}
    c(pt(x, a, lower.tail = FALSE), pf(x, a, b, lower.tail = FALSE), pchisq(x, a, lower.tail = FALSE), qnorm(p), qt(p, a), qf(p, a, b))`);
  const found = [
    ...rows.map((row) => tUpper(row.x, row.a)),
    ...rows.map((row) => fUpper(row.x, row.a, row.b)),
    ...rows.map((row) => chiSquareUpper(row.x, row.a)),
    ...rows.map((row) => normalQuantile(row.p)),
    ...rows.map((row) => tQuantile(row.p, row.a)),
    ...rows.map((row) => fQuantile(row.p, row.a, row.b)),
  ];
  expect(found).toHaveLength(expected.length);
  found.forEach((value, index) => expectClose(value, expected[index] ?? NaN));
});

test('noncentral t, to 1e-7', async () => {
  const rows = draw(fc.record({ t: real(-5, 15), df: real(1, 60), ncp: real(-4, 15) }), 200);
  const expected = await r(
    `suppressWarnings(pt(${column(rows, (row) => row.t)}, ${column(rows, (row) => row.df)}, ${column(rows, (row) => row.ncp)}))`,
  );
  rows.forEach(({ t, df, ncp }, index) => {
    const value = expected[index] ?? NaN;
    expect(Math.abs(noncentralTCdf(t, df, ncp) - value)).toBeLessThan(1e-7 * value + 2e-12);
  });
});

test('power of a two-sided t test, to 1e-7, and the noncentrality that has it', async () => {
  const rows = draw(fc.record({ df: real(1, 60), level: real(0.01, 0.2), ncp: real(0, 12) }), 200);
  const expected =
    await r(`df <- ${column(rows, (row) => row.df)}; ncp <- ${column(rows, (row) => row.ncp)}; critical <- qt(${column(rows, (row) => row.level)} / 2, df, lower.tail = FALSE)
    suppressWarnings(c(critical, pt(-critical, df, ncp), pt(critical, df, ncp)))`);
  rows.forEach(({ df, level, ncp }, index) => {
    const [critical = NaN, below = NaN, lower = NaN] = [0, 1, 2].map((part) => expected[index + part * rows.length]);
    const power = 1 - lower + below;
    expectClose(twoSidedPower(critical, df, ncp), power, 1e-7);
    const isFlat = power < level + 1e-3 || power > 0.999; // where power says next to nothing about ncp
    if (!isFlat) expectClose(ncpForPower(critical, df, power), ncp, 1e-7);
  });
});

test('Wilson limits and chi-square of two groups', async () => {
  const rows = draw(fc.record({ one: unit, two: unit, level: real(0.5, 0.999) }), 200);
  const expected = await r(`x <- ${column(rows, ({ one }) => one.count)}; n <- ${column(rows, ({ one }) => one.seeds)}
    y <- ${column(rows, ({ two }) => two.count)}; m <- ${column(rows, ({ two }) => two.seeds)}; level <- ${column(rows, (row) => row.level)}
    suppressWarnings(unlist(lapply(seq_along(x), function(i) {
      limits <- prop.test(x[i], n[i], conf.level = level[i], correct = FALSE)$conf.int
      statistic <- prop.test(c(x[i], y[i]), c(n[i], m[i]), correct = FALSE)$statistic
      c(limits, if (is.nan(statistic)) 0 else statistic)
    })))`);
  rows.forEach(({ one, two, level }, index) => {
    const interval = wilsonInterval(one.count / one.seeds, one.seeds, normalQuantile((1 + level) / 2));
    expect(Math.abs(interval.lower - (expected[3 * index] ?? NaN))).toBeLessThan(1e-12); // R's 0 is only nearly 0
    expect(Math.abs(interval.upper - (expected[3 * index + 1] ?? NaN))).toBeLessThan(1e-12);
    expect(Math.abs(pearsonTwoByTwo(one, two) - (expected[3 * index + 2] ?? NaN))).toBeLessThan(1e-10);
  });
});

test('dispersion of units within groups', async () => {
  const rows = draw(fc.array(fc.array(unit, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 4 }), 200);
  const groups = (row: (typeof rows)[number]) =>
    `list(${row.map((units) => `list(x = ${column(units, ({ count }) => count)}, n = ${column(units, ({ seeds }) => seeds)})`).join(',')})`;
  const expected = await r(`unlist(lapply(list(${rows.map(groups).join(',')}), function(groups) {
    parts <- sapply(groups, function(g) {
      p <- sum(g$x) / sum(g$n)
      if (p == 0 || p == 1) c(0, 0) else c(sum((g$x - g$n * p)^2 / (g$n * p) + (g$n * p - g$x)^2 / (g$n * (1 - p))), length(g$x) - 1)
    })
    rowSums(parts)
  }))`);
  rows.forEach((row, index) => {
    const { statistic, df } = pearsonDispersion(row);
    expect(Math.abs(statistic - (expected[2 * index] ?? NaN))).toBeLessThan(1e-9);
    expect(df).toBe(expected[2 * index + 1]);
  });
});

test('two groups of readings: Welch, Hedges, Hodges–Lehmann', async () => {
  const rows = draw(fc.record({ a: readings(2, 8), b: readings(2, 8) }), 100);
  const expected = await r(`a <- ${list(rows.map(({ a }) => a))}; b <- ${list(rows.map(({ b }) => b))}
    unlist(Map(function(a, b) {
      test <- t.test(a, b)
      df <- length(a) + length(b) - 2
      unit <- sqrt(1 / length(a) + 1 / length(b))
      d <- (mean(a) - mean(b)) / sqrt(((length(a) - 1) * var(a) + (length(b) - 1) * var(b)) / df)
      limit <- function(p) if (abs(d / unit) > 20) -99 else suppressWarnings(
        uniroot(function(ncp) pt(d / unit, df, ncp) - p, d / unit + c(-5, 5), extendInt = "yes", tol = 1e-12)$root) * unit
      c(test$parameter, test$stderr, test$p.value, (1 - 3 / (4 * df - 1)) * d, limit(0.975), limit(0.025), median(outer(a, b, "-")))
    }, a, b))`);
  rows.forEach(({ a, b }, index) => {
    const [df = NaN, se = NaN, p = NaN, g = NaN, lower = NaN, upper = NaN, shift = NaN] = expected.slice(7 * index);
    const welch = welchT(a, b);
    expectClose(welch?.df, df);
    expectClose(welch?.se, se);
    expectClose(welch?.p, p);
    const hedges = hedgesG(a, b, 0.95);
    expect(Math.abs((hedges?.estimate ?? NaN) - g)).toBeLessThan(1e-9 * Math.max(1, Math.abs(g)));
    if (lower !== -99)
      expect(Math.abs((hedges?.lower ?? NaN) - lower)).toBeLessThan(1e-7 * Math.max(1, Math.abs(lower)));
    if (upper !== -99)
      expect(Math.abs((hedges?.upper ?? NaN) - upper)).toBeLessThan(1e-7 * Math.max(1, Math.abs(upper)));
    expect(Math.abs(hodgesLehmann(a, b) - shift)).toBeLessThan(1e-9);
  });
});

test('differences within blocks, and several groups at once', async () => {
  const rows = draw(
    fc.record({ d: readings(2, 9), groups: fc.array(readings(2, 6), { minLength: 2, maxLength: 5 }) }),
    100,
  );
  const expected = await r(`unlist(Map(function(d, groups) {
      test <- t.test(d)
      y <- unlist(groups)
      g <- factor(rep(seq_along(groups), lengths(groups)))
      table <- anova(lm(y ~ g))
      ms <- table[["Mean Sq"]]
      n <- lengths(groups)
      size <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
      c(test$stderr, test$p.value, table[["F value"]][1], table[["Pr(>F)"]][1], (ms[1] - ms[2]) / (ms[1] + (size - 1) * ms[2]))
    }, ${list(rows.map(({ d }) => d))}, list(${rows.map(({ groups }) => list(groups)).join(',')})))`);
  rows.forEach(({ d, groups }, index) => {
    const [se = NaN, p = NaN, f = NaN, pf = NaN, icc = NaN] = expected.slice(5 * index);
    expectClose(pairedT(d)?.se, se);
    expectClose(pairedT(d)?.p, p);
    expectClose(oneWayF(groups)?.statistic, f);
    expectClose(oneWayF(groups)?.p, pf);
    expect(Math.abs((intraclassCorrelation(groups) ?? NaN) - icc)).toBeLessThan(1e-9);
  });
});

test('means pooled over lots', async () => {
  const rows = draw(
    fc.array(fc.record({ treated: readings(2, 5), control: readings(2, 5) }), { minLength: 2, maxLength: 4 }),
    60,
  );
  const expected =
    await r(`unlist(lapply(list(${rows.map((lots) => `list(${lots.map(({ treated, control }) => list([treated, control])).join(',')})`).join(',')}), function(lots) {
      y <- unlist(lots)
      lot <- factor(rep(seq_along(lots), sapply(lots, function(l) length(unlist(l)))))
      treated <- unlist(lapply(lots, function(l) rep(c(1, 0), lengths(l))))
      full <- lm(y ~ lot * treated)
      table <- anova(lm(y ~ lot + treated), full)
      w <- sapply(lots, function(l) prod(lengths(l)) / sum(lengths(l)))
      c(coef(lm(y ~ lot + treated))[["treated"]], summary(full)$sigma / sqrt(sum(w)), table$F[2], table[["Pr(>F)"]][2])
    }))`);
  rows.forEach((lots, index) => {
    const [difference = NaN, se = NaN, f = NaN, p = NaN] = expected.slice(4 * index);
    const found = pooledMeans(lots);
    expect(Math.abs((found?.difference ?? NaN) - difference)).toBeLessThan(1e-9);
    expectClose(found?.se, se);
    expect(Math.abs((found?.lotsDiffer.statistic ?? NaN) - f)).toBeLessThan(1e-9 * Math.max(1, f));
    expectClose(found?.lotsDiffer.p, p, 1e-8);
  });
});

test('exact permutation tests', async () => {
  const rows = draw(
    fc.record({
      a: readings(1, 5),
      b: readings(1, 5),
      x: fc.array(unit, { minLength: 3, maxLength: 4 }),
      y: fc.array(unit, { minLength: 3, maxLength: 5 }),
      d: readings(1, 9),
    }),
    60,
  );
  const expected = await r(`p_of <- function(observed, all) {
      equal <- 1e-9 * max(abs(all))
      reached <- function(limit) mean(abs(all) >= limit - equal)
      if (reached(max(abs(all))) > 0.05) -99 else reached(abs(observed))
    }
    unlist(Map(function(a, b, x, n, k, d) {
      y <- c(a, b)
      means <- function(i) mean(y[i]) - mean(y[-i])
      shares <- function(i) sum(x[i]) / sum(n[i]) - sum(x[-i]) / sum(n[-i])
      sums <- as.matrix(expand.grid(rep(list(c(1, -1)), length(d)))) %*% d
      c(p_of(means(seq_along(a)), combn(length(y), length(a), means)), p_of(shares(seq_len(k)), combn(length(x), k, shares)), p_of(sum(d), sums))
    }, ${list(rows.map(({ a }) => a))}, ${list(rows.map(({ b }) => b))}, ${list(rows.map(({ x, y }) => [...x, ...y].map(({ count }) => count)))},
      ${list(rows.map(({ x, y }) => [...x, ...y].map(({ seeds }) => seeds)))}, ${column(rows, ({ x }) => x.length)}, ${list(rows.map(({ d }) => d))}))`);
  rows.forEach(({ a, b, x, y, d }, index) => {
    const found = [permuteMeans(a, b), permuteProportions(x, y), signFlipTest(d)];
    found.forEach((permutation, which) =>
      expectClose(permutation?.p ?? -99, expected[3 * index + which] ?? NaN, 1e-12),
    );
  });
});

test('Holm', async () => {
  const rows = draw(
    fc.array(
      fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
      { minLength: 1, maxLength: 7 },
    ),
    100,
  );
  const expected = await r(`unlist(lapply(${list(rows)}, p.adjust, "holm"))`);
  rows.flatMap((p) => holm(p)).forEach((value, index) => expectClose(value, expected[index] ?? NaN, 1e-14));
});
