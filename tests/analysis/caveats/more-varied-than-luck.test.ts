import { expect, test } from 'vitest';
import { moreVariedThanLuck } from '../../../src/analysis/caveats/more-varied-than-luck.ts';
import { expectClose } from '../../support/close.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { r } from '../../support/r.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[], seeds = 100) => {
  const trays = (counts: readonly number[]) => counts.map((count) => [count, seeds] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return moreVariedThanLuck(trial, [resultOf(trial)]);
};

test('over-dispersed: φ above 2 and beyond luck (p from R pchisq), ranges beyond tolerance with it', async () => {
  const [caveat, ...others] = told([78, 85, 85, 92], [60, 90, 75, 92]);
  expect(others).toEqual([]);
  expect(caveat).toMatchObject({ weight: 'note', lot: 'leek', treatment: null, evidence: { df: 6 } });
  expect(caveat?.evidence.ranges).toMatchObject([
    { treatment: 'jar', lowest: 60, highest: 92, range: 32, rule: 'table' },
  ]);
  const [p = NaN] = await r(
    'x <- function(k) sum((k - mean(k))^2/(100*mean(k/100)*(1-mean(k/100)))); pchisq(x(c(78,85,85,92)) + x(c(60,90,75,92)), 6, lower.tail = FALSE)',
  );
  expectClose(caveat?.evidence.p as number, p);
});

test('a range of 15 at 85 % is beyond tolerance, though the lot is not over-dispersed', () => {
  expect(told([77, 85, 86, 92], [85, 85, 85, 86])).toMatchObject([
    { evidence: { phi: null, df: null, p: null, ranges: [{ treatment: 'packet', range: 15, limit: 14 }] } },
  ]);
});

test('a range of 14 is luck', () => {
  expect(told([78, 85, 85, 92], [85, 85, 85, 86])).toEqual([]);
});

test('single trays cannot differ', () => {
  expect(told([10], [90])).toEqual([]);
});
