import { expect, test } from 'vitest';
import { axisLabels } from '../../src/charts/axis-labels.ts';

test('all labels stand where there is room', () => {
  expect(axisLabels([3, 5, 7, 14], (day) => day * 20, String)).toEqual([3, 5, 7, 14]);
});

test('the last and the first stand always, of the others those that fit', () => {
  expect(axisLabels([1, 2, 3, 4, 20, 21, 22], (day) => day * 10, String)).toEqual([1, 4, 22]);
});

test('one day, or none', () => {
  expect(axisLabels([7], (day) => day, String)).toEqual([7]);
  expect(axisLabels([], (day) => day, String)).toEqual([]);
});
