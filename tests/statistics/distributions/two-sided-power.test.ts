import { expect, test } from 'vitest';
import { noncentralTCdf } from '../../../src/statistics/distributions/noncentral-t.ts';
import { tQuantile } from '../../../src/statistics/distributions/t.ts';
import { ncpForPower, twoSidedPower } from '../../../src/statistics/distributions/two-sided-power.ts';
import { expectClose } from '../../support/close.ts';

const DF = [0.4, 1, 1.7, 2, 6, 14.3, 98, 4000];

test('it is both tails of noncentral t together, far out as well', () => {
  for (const df of DF) {
    const critical = tQuantile(0.975, df);
    for (const ncp of [0, 0.3, 2.8, 12, 39.9, 41, 300]) {
      const tails = 1 - noncentralTCdf(critical, df, ncp) + noncentralTCdf(-critical, df, ncp);
      expectClose(twoSidedPower(critical, df, ncp), tails, 1e-12);
    }
  }
});

test('without noncentrality it is the level', () => {
  for (const df of DF) expectClose(twoSidedPower(tQuantile(0.975, df), df, 0), 0.05, 1e-12);
});

test('the noncentrality for a power has that power, for any df, level and power', () => {
  for (const df of DF) {
    for (const level of [0.2, 0.05, 0.001]) {
      const critical = tQuantile(1 - level / 2, df);
      for (const power of [level + 0.001, 0.5, 0.8, 0.99]) {
        if (power <= level) continue;
        expectClose(twoSidedPower(critical, df, ncpForPower(critical, df, power)), power, 1e-11);
      }
    }
  }
});

test('refuses what is no number', () => {
  expect(() => twoSidedPower(NaN, 3, 1)).toThrow('got NaN');
  expect(() => twoSidedPower(2, 0, 1)).toThrow(RangeError);
});
