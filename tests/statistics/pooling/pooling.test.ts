import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leaveOneOut } from '../../../src/statistics/pooling/leave-one-out.ts';
import { randomEffects } from '../../../src/statistics/pooling/random-effects.ts';
import { remlVariance } from '../../../src/statistics/pooling/reml-variance.ts';
import type { Study } from '../../../src/statistics/pooling/study.ts';
import reference from '../../reference/r/pooling.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { expectFigures, rFigures, vector } from '../../support/r-figures.ts';

const studiesOf = (estimates: readonly number[], errors: readonly number[]): Study[] =>
  estimates.map((estimate, index) => ({ estimate, se: errors[index] ?? NaN }));

const figures = (studies: readonly Study[]) => {
  const { estimate, interval, test, guarded, prediction, nextResult, tau2, i2, q, weights } = randomEffects(studies);
  return {
    estimate,
    lower: interval.lower,
    upper: interval.upper,
    p: test.p,
    guarded: Number(guarded),
    predictionLower: prediction.lower,
    predictionUpper: prediction.upper,
    nextLower: nextResult.lower,
    nextUpper: nextResult.upper,
    tau2,
    i2,
    q: q.statistic,
    qP: q.p,
    ...Object.fromEntries(weights.map((weight, index) => [`weight ${index + 1}`, weight])),
  };
};

test.each(reference.pooling)('$name matches R', (expected) => {
  const found: Readonly<Record<string, number>> = figures(studiesOf(expected.estimates, expected.errors));
  const { name: _, estimates: _y, errors: _se, weights, ...rest } = expected;
  const wanted = { ...rest, ...Object.fromEntries(weights.map((weight, index) => [`weight ${index + 1}`, weight])) };
  for (const [key, value] of Object.entries(wanted)) expectClose(found[key], value, 1e-8);
});

test('published fits are met', () => {
  const [bcg, stay] = reference.pooling;
  // metafor's documentation of rma(), method REML, on dat.bcg: from memory.
  expect(bcg?.estimate.toFixed(4)).toBe('-0.7145');
  expect(bcg?.tau2.toFixed(4)).toBe('0.3132');
  expect(bcg?.i2.toFixed(2)).toBe('92.22');
  expect(bcg?.q.toFixed(4)).toBe('152.2330');
  // Normand (1999), length of stay: REML −15.1060, τ² 684.6462, Q 238.9158 (metafor 3 in R 4.2).
  expect(stay?.estimate.toFixed(4)).toBe('-15.1060');
  expect(stay?.tau2.toFixed(4)).toBe('684.6462');
  expect(stay?.q.toFixed(4)).toBe('238.9158');
});

test('without each in turn it matches R', () => {
  for (const { estimates, errors, without } of reference.leaveOneOut) {
    const found = leaveOneOut(studiesOf(estimates, errors));
    expect(found).toHaveLength(without.length);
    for (const [index, { estimate, lower, upper }] of without.entries()) {
      expectClose(found[index]?.estimate, estimate, 1e-8);
      expectClose(found[index]?.interval.lower, lower, 1e-8);
      expectClose(found[index]?.interval.upper, upper, 1e-8);
    }
  }
});

const study = fc.record({
  estimate: fc.double({ min: -60, max: 60, noNaN: true }),
  se: fc.double({ min: 0.5, max: 25, noNaN: true }),
});
const studies = fc.array(study, { minLength: 2, maxLength: 9 });

test('random trials: every figure agrees with R', async () => {
  const drawn = fc.sample(studies, { numRuns: 150, seed: 20261125 });
  const all = await rFigures('random-effects.R', drawn.map((each) => `random_effects(${vector(each.map(({ estimate }) => estimate))}, ${vector(each.map(({ se }) => se))})`)); // prettier-ignore
  const iterative = ['estimate', 'lower', 'upper', 'p', 'predictionLower', 'predictionUpper', 'nextLower', 'nextUpper', 'tau2', 'i2', 'qP']; // prettier-ignore
  const tolerances = Object.fromEntries([...iterative, ...Array.from({ length: 9 }, (_, i) => `weight ${i + 1}`)].map((name) => [name, 1e-6])); // prettier-ignore
  drawn.forEach((each, index) => expectFigures(figures(each), all[index] ?? [], tolerances));
});

test('the order of trials does not matter', () => {
  fc.assert(
    fc.property(studies, (each) => {
      const [there, back] = [randomEffects(each), randomEffects(each.toReversed())];
      expectClose(back.estimate, there.estimate || 0, 1e-7);
      expectClose(back.interval.upper - back.interval.lower, there.interval.upper - there.interval.lower, 1e-6);
      back.weights.toReversed().forEach((weight, index) => expectClose(weight, there.weights[index] ?? NaN, 1e-6));
    }),
    { seed: 7, numRuns: 200 },
  );
});

test('another unit changes nothing but the unit; a shift moves the answer along', () => {
  fc.assert(
    fc.property(studies, fc.constantFrom(1e-6, 0.01, 1000), (each, unit) => {
      const scaled = randomEffects(each.map(({ estimate, se }) => ({ estimate: estimate * unit, se: se * unit })));
      const plain = randomEffects(each);
      expect(Math.abs(scaled.estimate / unit - plain.estimate)).toBeLessThan(1e-6);
      expect(Math.abs(scaled.tau2 / unit ** 2 - plain.tau2)).toBeLessThan(1e-6 * Math.max(1, plain.tau2));
      const moved = randomEffects(each.map(({ estimate, se }) => ({ estimate: estimate + 100, se })));
      expect(Math.abs(moved.estimate - 100 - plain.estimate)).toBeLessThan(1e-6);
      expect(moved.interval.method).toBe(plain.interval.method);
    }),
    { seed: 11, numRuns: 200 },
  );
});

test('the interval is never narrower than the ordinary one of the same fit, nor p smaller', () => {
  fc.assert(
    fc.property(studies, (each) => {
      const { interval, tau2, prediction, nextResult } = randomEffects(each);
      const ordinary = 1.959963984540054 / Math.sqrt(each.reduce((sum, { se }) => sum + 1 / (se ** 2 + tau2), 0));
      const half = (interval.upper - interval.lower) / 2;
      expect(half).toBeGreaterThanOrEqual(ordinary * (1 - 1e-12));
      expect(prediction.upper - prediction.lower).toBeGreaterThanOrEqual(2 * half * (1 - 1e-12));
      expect(nextResult.upper).toBeGreaterThan(prediction.upper);
    }),
    { seed: 13, numRuns: 300 },
  );
});

test('trials that agree to the last digit share nothing between them: τ² 0, the z interval, the guard on', () => {
  const found = randomEffects(studiesOf([7, 7, 7], [3, 3, 3]));
  expect(found).toMatchObject({ tau2: 0, i2: 0, guarded: true, interval: { method: 'normal' }, test: { df: null } });
  expectClose(found.interval.upper, 7 + (1.959963984540054 * 3) / Math.sqrt(3), 1e-12);
});

test('of two hills of the likelihood the higher is taken', () => {
  // One very sure trial and two far from it: the slope falls, rises and falls again.
  const odd = studiesOf([0, 0.001, 10, -14], [0.0005, 0.0004, 3, 4]);
  const likelihood = (tau2: number) => {
    const w = odd.map(({ se }) => 1 / (se ** 2 + tau2));
    const total = w.reduce((a, b) => a + b);
    const mean = odd.reduce((sum, { estimate }, i) => sum + (w[i] ?? 0) * estimate, 0) / total;
    const apart = odd.reduce((sum, { estimate }, i) => sum + (w[i] ?? 0) * (estimate - mean) ** 2, 0);
    return (w.reduce((sum, each) => sum + Math.log(each), 0) - Math.log(total) - apart) / 2;
  };
  const best = likelihood(remlVariance(odd));
  for (let power = -12; power < 4; power += 0.01) expect(likelihood(10 ** power)).toBeLessThanOrEqual(best + 1e-9);
});

test.each([
  [[1], [1]],
  [
    [1, 2],
    [0, 1],
  ],
  [
    [1, NaN],
    [1, 1],
  ],
])('refuses %j with standard errors %j', (estimates, errors) => {
  expect(() => randomEffects(studiesOf(estimates, errors))).toThrow(
    'randomEffects needs 2 or more estimates with standard errors above 0',
  );
});
