import { expect, test } from 'vitest';
import { betaBinomialDraw } from '../../../src/statistics/draws/beta-binomial-draw.ts';
import { binomialDraw } from '../../../src/statistics/draws/binomial-draw.ts';
import { logGammaDraw } from '../../../src/statistics/draws/log-gamma-draw.ts';
import { normalDraw } from '../../../src/statistics/draws/normal-draw.ts';
import { seededRandom } from '../../../src/statistics/random.ts';
import { r } from '../../support/r.ts';

const DRAWS = 40_000;

/** The share of draws at or below each point against R's, within 4 standard errors. */
async function expectDistribution(draw: (random: () => number) => number, points: readonly number[], inR: string) {
  const random = seededRandom(inR);
  const drawn = Array.from({ length: DRAWS }, () => draw(random));
  const expected = await r(`sapply(c(${points.join(', ')}), function(x) ${inR})`);
  for (const [index, point] of points.entries()) {
    const share = drawn.filter((value) => value <= point).length / DRAWS;
    const p = expected[index] ?? NaN;
    const error = Math.sqrt((p * (1 - p)) / DRAWS);
    expect(Math.abs(share - p), `${inR} at ${point}: ${share}, R ${p}`).toBeLessThan(4 * error + 1e-12);
  }
}

test('normal draws follow pnorm', async () => {
  await expectDistribution(normalDraw, [-3, -1.5, -0.2, 0, 0.7, 2, 3], 'pnorm(x)');
});

test.each([0.02, 0.3, 1, 2.5, 80])('log gamma draws of shape %s follow pgamma', async (shape) => {
  const points = (await r(`qgamma(c(.3, .5, .7, .9, .99), ${shape})`)).map(Math.log);
  await expectDistribution((random) => logGammaDraw(shape, random), points, `pgamma(exp(x), ${shape})`);
});

test.each([
  [25, 0.6],
  [50, 0.02],
  [1300, 0.93],
  [1, 0.5],
])('binomial draws of %s and %s follow pbinom', async (size, share) => {
  const points = await r(`qbinom(c(.02, .2, .5, .8, .98), ${size}, ${share})`);
  await expectDistribution((random) => binomialDraw(size, share, random), points, `pbinom(x, ${size}, ${share})`);
});

test.each([
  [50, 0.9, 2],
  [10, 0.99, 8],
  [25, 0.5, 4],
  [40, 0.7, 1],
])('trays of %s seeds, share %s, φ %s follow the beta-binomial distribution', async (seeds, share, phi) => {
  const density =
    phi === 1
      ? `dbinom(0:x, ${seeds}, ${share})`
      : `{s <- (${seeds} - ${phi}) / (${phi} - 1); choose(${seeds}, 0:x) * beta(0:x + s * ${share}, ${seeds} - 0:x + s * (1 - ${share})) / beta(s * ${share}, s * (1 - ${share}))}`;
  const points = [0.5, 0.7, 0.9, 0.96].map((part) => Math.round(part * seeds));
  await expectDistribution((random) => betaBinomialDraw(seeds, share, phi, random), points, `sum(${density})`);
});

test('nothing and everything come up where that is certain', () => {
  const random = seededRandom('ends');
  expect([binomialDraw(30, 0, random), binomialDraw(30, 1, random)]).toEqual([0, 30]);
  expect([betaBinomialDraw(30, 0, 3, random), betaBinomialDraw(30, 1, 3, random)]).toEqual([0, 30]);
  expect(binomialDraw(0, 0.4, random)).toBe(0);
});

test('refuse what cannot be drawn', () => {
  const random = seededRandom('refused');
  expect(() => binomialDraw(2.5, 0.5, random)).toThrow('got 2.5 and 0.5');
  expect(() => binomialDraw(10, 1.2, random)).toThrow(RangeError);
  expect(() => logGammaDraw(0, random)).toThrow('got 0');
  expect(() => betaBinomialDraw(10, 0.5, 10, random)).toThrow('below the 10 seeds, got 0.5 and 10');
  expect(() => betaBinomialDraw(10, 0.5, 0.5, random)).toThrow(RangeError);
  expect(() => betaBinomialDraw(10, 1.1, 2, random)).toThrow('got 1.1 and 2');
});
