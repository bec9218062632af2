import fc from 'fast-check';
import { expect, test } from 'vitest';
import { betaKernel } from '../../../src/statistics/distributions/beta-kernel.ts';
import { incompleteBeta } from '../../../src/statistics/distributions/incomplete-beta.ts';
import { incompleteGamma } from '../../../src/statistics/distributions/incomplete-gamma.ts';
import { stirlingError } from '../../../src/statistics/distributions/stirling-error.ts';
import { expectClose } from '../../support/close.ts';
import { r } from '../../support/r.ts';
import { rVector } from '../../support/r-vector.ts';

const shape = fc.double({ min: -2, max: 4, noNaN: true }).map((power) => 10 ** power);
const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
const beta = fc.sample(fc.record({ x: share, a: shape, b: shape }), { seed: 20261125, numRuns: 400 });
const gamma = fc.sample(fc.record({ a: shape, ratio: fc.double({ min: 0.01, max: 5, noNaN: true }) }), {
  seed: 20261125,
  numRuns: 400,
});

test('the incomplete beta function and its kernel match R pbeta and dbeta for random shapes', async () => {
  const args = (['x', 'a', 'b'] as const).map((name) => rVector(beta.map((value) => value[name]))).join(', ');
  const [tails, densities] = [await r(`pbeta(${args})`), await r(`dbeta(${args})`)];
  beta.forEach(({ x, a, b }, index) => {
    if ((tails[index] ?? 0) > 1e-290) expectClose(incompleteBeta(x, 1 - x, a, b), tails[index] ?? NaN);
    const density = betaKernel(a, b)(x, 1 - x) / (x * (1 - x));
    if ((densities[index] ?? 0) > 1e-290) expectClose(density, densities[index] ?? NaN);
  });
});

test('both tails of the incomplete gamma function match R pgamma for random shapes', async () => {
  const args = `${rVector(gamma.map(({ a, ratio }) => a * ratio))}, ${rVector(gamma.map(({ a }) => a))}`;
  const [lower, upper] = [await r(`pgamma(${args})`), await r(`pgamma(${args}, lower.tail = FALSE)`)];
  gamma.forEach(({ a, ratio }, index) => {
    const [low = NaN, high = NaN] = [lower[index], upper[index]];
    if (low > 1e-290) expectClose(incompleteGamma(a, a * ratio, 'lower'), low);
    if (high > 1e-290) expectClose(incompleteGamma(a, a * ratio, 'upper'), high);
  });
});

test('the tails swap with the shapes, and add up to 1', () => {
  for (const [x, a, b] of [
    [0.2, 3, 8],
    [0.7, 0.5, 40],
    [0.999, 12.5, 0.25],
  ] as const) {
    // prettier-ignore
    expectClose(incompleteBeta(x, 1 - x, a, b) + incompleteBeta(1 - x, x, b, a), 1, 1e-14);
  }
});

test('the ends are exact', () => {
  expect([incompleteBeta(0, 1, 2, 3), incompleteBeta(1, 0, 2, 3)]).toEqual([0, 1]);
  expect([incompleteGamma(2, 0, 'lower'), incompleteGamma(2, 0, 'upper')]).toEqual([0, 1]);
});

test('Stirling’s formula with its error gives factorials', () => {
  for (const [n, factorial] of [
    [1, 1],
    [5, 120],
    [10, 3_628_800],
    [20, 2.43290200817664e18],
  ] as const) {
    // prettier-ignore
    expectClose(Math.sqrt(2 * Math.PI * n) * (n / Math.E) ** n * Math.exp(stirlingError(n)), factorial, 1e-13);
  }
});
