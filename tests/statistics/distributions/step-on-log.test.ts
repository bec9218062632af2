import { expect, test } from 'vitest';
import { normalCdf, normalDensity, normalQuantile } from '../../../src/statistics/distributions/normal.ts';
import { stepOnLog } from '../../../src/statistics/distributions/step-on-log.ts';

/** A step towards the x below which a normal curve has a probability. */
const step = (x: number, p: number) => stepOnLog(normalCdf(x), normalDensity(x), -x * normalDensity(x), p);

test.each([0.001, 0.025, 0.3, 0.5])('near the root of %d the error falls to its cube', (p) => {
  const root = normalQuantile(p);
  for (const error of [0.1, -0.1, 0.01, -0.01]) {
    const x = root + error;
    expect(Math.abs(x - step(x, p) - root)).toBeLessThan(0.3 * Math.abs(error) ** 3 + 1e-14);
  }
});

test('from far away it leads to the root', () => {
  for (const from of [-6, -1, 0, 1.5]) {
    let x = from;
    for (let round = 0; round < 12; round++) x -= step(x, 0.025);
    expect(x).toBeCloseTo(normalQuantile(0.025), 12);
  }
});
