import { expect, test } from 'vitest';
import { moreAlikeThanChance } from '../../src/analysis/more-alike-than-chance.ts';
import { expectClose } from '../support/close.ts';
import { r } from '../support/r.ts';

const units = (seeds: number, ...counts: number[]) => counts.map((count) => ({ count, seeds }));

test('six pairs of sowings that agree to the seed are more alike than chance (R pchisq)', async () => {
  const alike = moreAlikeThanChance([units(50, 40, 40, 41, 41), units(50, 30, 30, 30, 31)]);
  const [statistic = NaN, p = NaN] = await r(
    'x <- function(k, n) sum((k - n*sum(k)/(n*length(k)))^2/(n*mean(k/n)*(1-mean(k/n)))); s <- x(c(40,40,41,41), 50) + x(c(30,30,30,31), 50); c(s, pchisq(s, 6))',
  );
  expect(alike?.df).toBe(6);
  expectClose(alike?.phi, statistic / 6);
  expectClose(alike?.p, p);
});

test('whether sowings are too alike cannot be told below 4 degrees of freedom, or from few seeds', () => {
  expect(moreAlikeThanChance([units(50, 40, 40), units(50, 30, 30, 30)])).toBeNull();
  expect(moreAlikeThanChance([units(50, 48, 48, 48, 48, 48), units(50, 30, 30, 30)])).toBeNull();
  expect(moreAlikeThanChance([units(50, 45, 45, 45, 45, 45)])).not.toBeNull();
});
