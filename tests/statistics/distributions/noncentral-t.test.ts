import { expect, test } from 'vitest';
import { noncentralTCdf, noncentralTLocation } from '../../../src/statistics/distributions/noncentral-t.ts';
import { normalCdf } from '../../../src/statistics/distributions/normal.ts';
import { tCdf } from '../../../src/statistics/distributions/t.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each(reference.noncentralT)('at $t on $df with ncp $ncp it matches R', ({ t, df, ncp, lower }) => {
  // R's series is good to about 1e-12 in all, so it has no digits of its own in smaller tails.
  expect(Math.abs(noncentralTCdf(t, df, ncp) - lower)).toBeLessThan(1e-7 * lower + 2e-12);
});

test.each(reference.noncentralTail)('small tail or large ncp, at $t on $df with ncp $ncp', ({ t, df, ncp, lower }) => {
  expectClose(noncentralTCdf(t, df, ncp), lower, 1e-7);
});

test.each(reference.noncentralLocation)(
  't $t on $df has probability $p below it at the ncp of R',
  ({ t, df, p, ncp }) => {
    expect(Math.abs(noncentralTLocation(t, df, p) - ncp)).toBeLessThan(1e-7 * Math.max(1, Math.abs(ncp)));
  },
);

test('without noncentrality it is Student’s t', () => {
  for (const df of [0.7, 2, 11, 400])
    for (const t of [-4, -0.2, 0, 3]) expectClose(noncentralTCdf(t, df, 0), tCdf(t, df));
});

test('at zero it is the normal tail of the noncentrality', () => {
  expectClose(noncentralTCdf(0, 3, 1.7), normalCdf(-1.7));
});

test('turning both signs swaps the tails', () => {
  expectClose(noncentralTCdf(1.4, 5, 2), 1 - noncentralTCdf(-1.4, 5, -2));
});

test('location and tail undo each other, far out as well', () => {
  for (const t of [-300, 2, 90, 1000, 1e6]) expectClose(noncentralTCdf(t, 4, noncentralTLocation(t, 4, 0.975)), 0.975);
});

test('the location comes from beta tails, the tail from a mean over s: they agree', () => {
  for (const t of [-2, 0, 1e-9, 0.4, 3, 12])
    for (const df of [1, 2.5, 6, 60, 4000])
      for (const p of [1e-5, 0.002, 0.025, 0.5, 0.9, 0.998, 0.9999])
        expectClose(noncentralTCdf(t, df, noncentralTLocation(t, df, p)), p, 1e-11);
});

test.each([
  [Infinity, 3, 0],
  [1, 0, 0],
  [1, 3, NaN],
])('refuses %d on %d with %d', (t, df, ncp) => {
  expect(() => noncentralTCdf(t, df, ncp)).toThrow(`got ${t} on ${df} with ${ncp}`);
});

test('no location for probability 0', () => {
  expect(() => noncentralTLocation(1, 3, 0)).toThrow('got 0');
});
