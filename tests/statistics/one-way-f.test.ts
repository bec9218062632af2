import { expect, test } from 'vitest';
import { intraclassCorrelation } from '../../src/statistics/intraclass-correlation.ts';
import { oneWayF } from '../../src/statistics/one-way-f.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

test.each(reference.oneWay)('$groups matches R', ({ groups, statistic, df, p, icc }) => {
  const found = oneWayF(groups);
  expectClose(found?.statistic, statistic, 1e-8);
  expect(found?.df).toEqual(df);
  expectClose(found?.p, p, 1e-8);
  expectClose(intraclassCorrelation(groups), icc, 1e-8);
});

// NIST StRD, one-way analysis of variance; data recalled from memory, they give the certified F.
test('SiRstv: F 1.18046237440255', () => {
  const found = oneWayF([
    [196.3052, 196.124, 196.189, 196.2569, 196.3403],
    [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
    [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
    [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
    [196.2119, 196.1051, 196.185, 196.0052, 196.209],
  ]);
  expectClose(found?.statistic, 1.18046237440255, 1e-11);
  expect(found?.df).toEqual([4, 20]);
});

test('AtmWtAg: F 15.9467335677930, where a naive sum loses the ninth digit', () => {
  // Digits after 107.868.
  const instruments = [
    '1568 1465 1572 1785 1446 1903 1526 1494 1616 1587 1519 1486 1419 1569 1508 1672 1385 1518 1662 1424 1360 1333 1610 1477',
    '1079 1344 1513 1197 1604 1385 1642 1365 1151 1082 1517 1448 1198 1482 1334 1609 1101 1512 1469 1360 1254 1261 1450 1368',
  ];
  const found = oneWayF(instruments.map((digits) => digits.split(' ').map((digit) => Number(`107.868${digit}`))));
  expectClose(found?.statistic, 15.946733567793, 1e-9);
  expect(found?.df).toEqual([1, 46]);
});

test('order within and between groups does not matter, nor does the unit', () => {
  const groups = [
    [1, 2, 4],
    [2, 5],
    [9, 7, 8, 8.5],
  ];
  const turned = groups.map((group) => [...group].reverse().map((x) => 3 + 25.4 * x)).reverse();
  expectClose(oneWayF(turned)?.statistic, oneWayF(groups)?.statistic ?? NaN);
  expectClose(intraclassCorrelation(turned), intraclassCorrelation(groups) ?? NaN);
});

test('plants all alike within units correlate fully; means all alike, negatively', () => {
  expect(
    intraclassCorrelation([
      [1, 1],
      [2, 2],
      [5, 5],
    ]),
  ).toBe(1);
  expectClose(
    intraclassCorrelation([
      [1, 3],
      [1, 3],
      [3, 1],
    ]),
    -1,
  );
});

test('no value without two groups, without replication, or without spread', () => {
  expect(oneWayF([[1, 2, 3]])).toBeNull();
  expect(oneWayF([[1], [2], [3]])).toBeNull();
  expect(
    oneWayF([
      [1, 1],
      [2, 2],
    ]),
  ).toBeNull();
  expect(intraclassCorrelation([[1, 2, 3]])).toBeNull();
  expect(intraclassCorrelation([[1], [2]])).toBeNull();
  expect(
    intraclassCorrelation([
      [4, 4],
      [4, 4],
    ]),
  ).toBeNull();
});

test('refuses an empty group', () => {
  expect(() => oneWayF([[1, 2], []])).toThrow(RangeError);
});
