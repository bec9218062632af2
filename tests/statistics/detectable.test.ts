import { expect, test } from 'vitest';
import { detectableMean } from '../../src/statistics/detectable-mean.ts';
import { detectableProportion } from '../../src/statistics/detectable-proportion.ts';
import reference from '../reference/r/planning.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { expectCloseOrNull } from '../support/close-or-null.ts';

const design = { share: 0.8, control: 200, treated: 200, used: 1.5, dfUsed: 7 };

test.each(reference.proportion)(
  'proportion $share, $control and $treated seeds, φ* $used on $dfUsed: R',
  ({ detectable, ...given }) => {
    expectCloseOrNull(detectableProportion(given), detectable);
  },
);

test.each(reference.mean)('$n units a treatment, sd $sd: power.t.test of R', ({ n, sd, level, power, detectable }) => {
  expectClose(detectableMean({ sd, control: n, treated: n, df: 2 * n - 2, level, power }), detectable, 1e-7);
});

test('more seeds show smaller differences, more spread larger ones only', () => {
  const base = detectableProportion(design) ?? NaN;
  expect(detectableProportion({ ...design, treated: 400 })).toBeLessThan(base);
  expect(detectableProportion({ ...design, used: 3 })).toBeGreaterThan(base);
  expect(detectableProportion({ ...design, dfUsed: 3 })).toBeGreaterThan(base);
  expect(detectableProportion({ ...design, power: 0.9 })).toBeGreaterThan(base);
});

test('germination and its absence are the same question', () => {
  expectClose(detectableProportion({ ...design, share: 0.2 }), detectableProportion(design) ?? NaN);
});

test('near the top only a fall has room', () => {
  const found = detectableProportion({ ...design, share: 0.97 }) ?? NaN;
  expect(found).toBeGreaterThan(0.03);
});

test('a detectable mean scales with the spread', () => {
  const units = { control: 4, treated: 6, df: 7.3 };
  expectClose(detectableMean({ ...units, sd: 2.54 }), 2.54 * detectableMean({ ...units, sd: 1 }));
});

test('refuse nonsense', () => {
  expect(() => detectableProportion({ ...design, share: 1 })).toThrow('"share":1');
  expect(() => detectableProportion({ ...design, used: 0.5 })).toThrow(RangeError);
  expect(() => detectableMean({ sd: 0, control: 4, treated: 4, df: 6 })).toThrow('"sd":0');
});
