import { expect, test } from 'vitest';
import { characters, textWidth } from '../../src/charts/text-width.ts';

// At 100 units: semi-bold in the charts' own face, and in Arial, measured by a canvas in Chromium 156.
test.each([
  ['Sealed jar with silica gel in the fridge', 1729, 1618],
  ['Paper packet in the shed', 1148, 1106],
  ['9 fewer to 17 more per 100', 1237, 1201],
  ['Soaked 24 h at 20 °C (rainwater)', 1496, 1457],
  ['WARM WINDOW', 758, 779],
  ['illicit fjord', 472, 411],
])('the estimate for "%s" is above the measured widths by a tenth at most', (text, own, arial) => {
  expect(textWidth(text, 100)).toBeGreaterThanOrEqual(Math.max(own, arial));
  expect(textWidth(text, 100)).toBeLessThan(1.1 * Math.max(own, arial));
});

test('an accented letter is as wide as its letter; an emoji with its parts is one square', () => {
  expect(textWidth('é', 16)).toBe(textWidth('e', 16));
  expect(characters('👩‍🌾é')).toHaveLength(2);
  expect(textWidth('👩‍🌾', 16)).toBe(17);
});

test('width grows with size and adds up over characters', () => {
  expect(textWidth('soaked', 28)).toBe(2 * textWidth('soaked', 14));
  expect(textWidth('soaked 6 h', 14)).toBeCloseTo(textWidth('soaked', 14) + textWidth(' 6 h', 14), 10);
});
