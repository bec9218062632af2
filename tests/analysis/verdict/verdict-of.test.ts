import { expect, test } from 'vitest';
import { verdictOf, type Evidence } from '../../../src/analysis/verdict/verdict-of.ts';

const range = (lower: number, upper: number) => ({ lower, upper });

/** Four units of each, a margin of 10 fixed beforehand. */
function verdict(interval: readonly [number, number], parts: Partial<Evidence> = {}) {
  const [lower, upper] = interval;
  return verdictOf({
    replicated: true,
    units: 4,
    germinated: 80,
    margin: 10,
    marginFixed: true,
    interval: range(lower, upper),
    ninety: range(lower + 1, upper - 1),
    own: range(lower, upper),
    neverSame: false,
    ...parts,
  });
}

test.each([
  [[-8, 8], 'same'],
  [[-11, 11], 'same'], // judged by the 90 % interval
  [[-12, 8], 'unclear'],
  [[2, 9], 'same'], // off zero, but too small to matter
  [[2, 15], 'different'],
  [[-15, -2], 'different'],
  [[10.5, 20], 'matters'],
  [[-20, -10.5], 'matters'],
  [[10, 20], 'different'],
  [[0, 20], 'unclear'],
] as const)('%j with a margin of 10 is %s', (interval, expected) => {
  expect(verdict(interval).verdict).toBe(expected);
  expect(verdict([-interval[1], -interval[0]]).verdict).toBe(expected);
});

test('without replication nothing else is looked at', () => {
  expect(verdict([-1, 1], { replicated: false })).toEqual({ verdict: 'untestable', shown: false });
  expect(verdict([20, 30], { replicated: false }).verdict).toBe('untestable');
});

test('fewer than five germinated seeds are unclear, whatever the intervals', () => {
  expect(verdict([-1, 1], { germinated: 4 })).toEqual({ verdict: 'unclear', shown: false });
  expect(verdict([20, 30], { germinated: 4 }).verdict).toBe('unclear');
  expect(verdict([20, 30], { germinated: 5 }).verdict).toBe('matters');
});

test('a margin that was not fixed beforehand never makes the same; that it lies within is shown', () => {
  expect(verdict([-8, 8], { marginFixed: false })).toEqual({ verdict: 'unclear', shown: true });
  expect(verdict([2, 9], { marginFixed: false })).toEqual({ verdict: 'different', shown: true });
});

test('the same needs three units a treatment', () => {
  expect(verdict([-8, 8], { units: 2 })).toEqual({ verdict: 'unclear', shown: true });
  expect(verdict([-8, 8], { units: 3 }).verdict).toBe('same');
});

test('without a margin there is only different or unclear', () => {
  expect(verdict([-1, 1], { margin: null })).toEqual({ verdict: 'unclear', shown: false });
  expect(verdict([20, 30], { margin: null })).toEqual({ verdict: 'different', shown: false });
});

test('with coarse checks the own interval makes the difference, the hull whether it matters', () => {
  expect(verdict([-3, 25], { own: range(12, 20) }).verdict).toBe('different');
  expect(verdict([-3, 25], { own: range(-1, 20) }).verdict).toBe('unclear');
  expect(verdict([-8, 8], { neverSame: true })).toEqual({ verdict: 'unclear', shown: true });
});

test('without an interval it is unclear', () => {
  expect(verdict([0, 0], { interval: null, ninety: null, own: null })).toEqual({ verdict: 'unclear', shown: false });
});
