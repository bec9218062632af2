import { expect, test } from 'vitest';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeGroup, makeResult } from '../../support/make-result.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const words = wordsFor('en-US');

test.each([
  [1234.5, undefined, '1,234.5'],
  [1234567, 0, '1,234,567'],
  [-0.04, 1, '0.0'],
  [-3.25, 1, '−3.3'],
  [0.1 + 0.2, undefined, '0.3'],
  [100, undefined, '100'],
])('number(%d, %s) is %s', (value, digits, text) => {
  expect(words.number(value, digits)).toBe(text);
});

test.each([
  [75.5, '%', 50, '76 %'],
  [75.5, '%', 200, '75.5 %'],
  [5.44, 'days', null, '5.4 days'],
  [42.4, 'mm', null, '42 mm'],
  [3.4567, 'g', null, '3.46 g'],
  [0.01234, 'g', null, '0.0123 g'],
  [8.12, '% wet basis', null, '8.1 %'],
  [12, '', null, '12.0'],
  [null, 'mm', null, 'not known'],
])('quantity(%s, "%s", %s) is %s', (value, unit, seeds, text) => {
  expect(words.quantity(value, unit, seeds)).toBe(text);
});

test('ranges are said in words, never with minus signs', () => {
  expect(words.range(-9.2, 17.4, 'germination', '%')).toBe('9 fewer to 17 more per 100');
  expect(words.range(3.1, 20.8, 'germination', '%')).toBe('3 to 21 more per 100');
  expect(words.range(-2, -0.4, 't50', 'days')).toBe('0.4 to 2.0 days earlier');
  expect(words.range(8.26, 24, 'germination', '%', { column: null, matters: 8 })).toBe(
    'just over 8 to 24 more per 100',
  );
  expect(words.range(3.2, 8.4, 'trait', 'mm', { column: 'height', matters: null })).toBe('3 to 8 mm taller');
  expect(words.range(null, 3, 't50', 'days')).toBe('not known');
});

test('dates, lists and counts', () => {
  expect(words.date('2026-04-04')).toBe('4 April 2026');
  expect(words.date('2026-04')).toBe('April 2026');
  expect(words.date('spring')).toBe('spring');
  expect(['a'], words.list(['a'])).toEqual([words.list(['a'])]);
  expect(words.list(['a', 'b', 'c'])).toBe('a, b and c');
  expect(words.counted(1, 'trial')).toBe('1 trial');
  expect(words.counted(1200, 'sowing')).toBe('1,200 sowings');
});

test.each([
  ['a 40-cell tray', 'tray', 'trays'],
  ['tray of 40 cells', 'tray', 'trays'],
  ['9 cm pots', 'pot', 'pots'],
  ['petri dishes lined with paper', 'dish', 'dishes'],
  ['Ice-cream tub (1 l), lid on', 'tub', 'tubs'],
  ['glass jar', 'jar', 'jars'],
  ['a box', 'box', 'boxes'],
  ['seed tray on a heat mat', 'tray', 'trays'],
  ['rockwool cube', 'cube', 'cubes'],
  ['12', 'sowing', 'sowings'],
  [null, 'sowing', 'sowings'],
])('the container "%s" is called %s', (container, one, many) => {
  const trial = makeTrial({ sowing: { container, assignment: 'random', treated: 'each-sowing', block: null } });
  expect([words.unitWord(trial), words.unitWord(trial, true)]).toEqual([one, many]);
});

test('units of a group', () => {
  const trial = makeTrial({
    sowing: { container: 'dish', assignment: 'random', treated: 'each-sowing', block: 'Shelf' },
  });
  expect(words.units(trial, makeGroup('jar', { units: 1, unit: 'batch' }))).toBe('1 batch');
  expect(words.units(trial, makeGroup('jar', { units: 6, unit: 'block' }))).toBe('6 shelves');
  expect(words.units(trial, makeGroup('jar', { units: 2, unit: 'tray' }))).toBe('2 dishes');
});

test('lots are told apart', () => {
  const lots = [
    { ...makeLot('leek-1'), cultivar: 'Tall Hob' },
    { ...makeLot('leek-2'), cultivar: 'Tall Hob' },
    makeLot('cress', 'garden cress', 'Lepidium sativum'),
  ];
  const trial = makeTrial({ lots });
  expect(lots.map(({ id }) => words.lotName(trial, id))).toEqual([
    'Leek ‘Tall Hob’ (leek-1)',
    'Leek ‘Tall Hob’ (leek-2)',
    'Garden cress',
  ]);
  expect(words.lotName(trial, 'all')).toBe('all 3 lots');
});

test('titles of outcomes and names of comparisons', () => {
  const trial = makeTrial();
  const title = (parts: Parameters<typeof makeResult>[0]) => words.outcomeTitle(trial, makeResult(parts));
  expect(title({})).toBe('Came up by day 14');
  expect(title({ day: null, days: { leek: 14, cress: 6 } })).toBe('Came up by day 6 or 14');
  expect(title({ day: null, days: { a: 4, b: 6, c: 8, d: 10 } })).toBe('Came up');
  expect(title({ measure: 't50', day: null })).toBe('Day by which half were up');
  expect(title({ measure: 'trait', column: 'leaf_length', unit: 'mm', day: 21, days: { leek: 21 } })).toBe(
    'Leaf length on day 21',
  );
  const comparison = makeComparison({ estimate: 1 });
  expect(words.comparisonName(trial, comparison)).toBe('Sealed jar against Paper packet');
  expect(words.comparisonName(trial, { ...comparison, stored: 0.5 })).toBe(
    'Sealed jar against Paper packet, stored 6 months',
  );
  expect(words.comparisonName(trial, { ...comparison, stored: 0 })).toBe(
    'Sealed jar against Paper packet, at the start',
  );
});

test('a group in one line', () => {
  const trial = makeTrial();
  const line = (parts: Parameters<typeof makeGroup>[1], result: Parameters<typeof makeResult>[0] = {}) =>
    words.groupSentence(trial, makeResult(result), makeGroup('jar', parts));
  expect(line({})).toBe('Sealed jar: 76 of 100 (151 of 200 seeds, 4 trays; the data fit with 65 to 84)');
  expect(line({ seeds: 100, count: 76, estimate: 76 })).toBe(
    'Sealed jar: 76 of 100 seeds (4 trays; the data fit with 65 to 84)',
  );
  expect(
    line({
      count: 199,
      estimate: 99.5,
      interval: { level: 0.95, lower: 97.2, upper: 99.9, method: 'wilson-effective' },
    }),
  ).toBe('Sealed jar: more than 99 of 100 (199 of 200 seeds, 4 trays; the data fit with 97 to more than 99)');
  expect(line({ units: 1, interval: null })).toBe('Sealed jar: 76 of 100 (151 of 200 seeds, 1 tray)');
  expect(line({ estimate: null })).toBe('Sealed jar: not known (4 trays)');
  expect(
    line(
      { count: null, seeds: null, estimate: 42, interval: { level: 0.95, lower: 38.2, upper: 45.8, method: 'welch' } },
      { measure: 'trait', unit: 'mm', column: 'height' },
    ),
  ).toBe('Sealed jar: 42 mm (mean of 4 trays; the data fit with 38 to 46 mm)');
});

test('p-values', () => {
  expect([0.0004, 0.0312, 0.25, 0.9999, 1].map(words.pValue)).toEqual([
    'below 0.001',
    '0.031',
    '0.25',
    'above 0.99',
    '1.00',
  ]);
});
