import { expect, test } from 'vitest';
import { normalQuantile } from '../../src/statistics/distributions/normal.ts';
import { kishTipping } from '../../src/statistics/kish-tipping.ts';
import reference from '../reference/r/planning.json' with { type: 'json' };
import { expectCloseOrNull } from '../support/close-or-null.ts';

const z = normalQuantile(0.975);
const unit = (count: number, seeds: number) => ({ count, seeds });

test.each(reference.tipping)('$x1/$n1 against $x2/$n2 matches R', ({ x1, n1, x2, n2, rho, note }) => {
  const found = kishTipping(unit(x1, n1), unit(x2, n2), z);
  expect(found.note).toBe(note);
  expectCloseOrNull(found.rho, rho);
});

test('a wider level tips sooner, a clearer difference later; which comes first does not matter', () => {
  const { rho } = kishTipping(unit(48, 50), unit(30, 50), z);
  expect(kishTipping(unit(48, 50), unit(30, 50), 2.58).rho).toBeLessThan(rho ?? NaN);
  expect(kishTipping(unit(48, 50), unit(20, 50), z).rho).toBeGreaterThan(rho ?? NaN);
  expect(kishTipping(unit(30, 50), unit(48, 50), z).rho).toBe(rho);
});

test('without a difference zero is inside already; all against nothing at a low level never tips', () => {
  expect(kishTipping(unit(40, 50), unit(40, 50), z)).toEqual({ rho: null, note: 'already' });
  expect(kishTipping(unit(50, 50), unit(0, 50), 1)).toEqual({ rho: null, note: 'never' });
});

test('refuses less than one seed', () => {
  expect(() => kishTipping(unit(0, 0.5), unit(1, 2), z)).toThrow('got 0.5');
});
