import { expect, test } from 'vitest';
import { INK, PAPER } from '../../src/charts/chart-theme.ts';
import { treatmentStyle } from '../../src/charts/treatment-style.ts';
import { makeTreatment, makeTrial } from '../support/make-trial.ts';

const trialOf = (count: number) =>
  makeTrial({
    treatments: Array.from({ length: count }, (_, index) => makeTreatment(`t${index}`, { control: index === 2 })),
  });
const styles = (count: number) => trialOf(count).treatments.map(({ id }) => treatmentStyle(trialOf(count), id));
const COLOURS = styles(6)
  .map(({ colour }) => colour)
  .filter((colour) => colour !== INK);

test('the control is ink, a whole line and an open circle, wherever it stands', () => {
  expect(treatmentStyle(trialOf(4), 't2')).toEqual({ colour: INK, fill: PAPER, dash: [1, 0], shape: 'circle' });
});

test('five treatments beside the control each have a colour, a dash and a shape of their own', () => {
  const all = styles(6);
  for (const of of ['colour', 'dash', 'shape'] as const) {
    expect(new Set(all.map((style) => String(style[of]))).size, of).toBe(6);
  }
});

test('no combination comes twice among 126 treatments', () => {
  const combinations = styles(126).map(({ colour, dash, shape }) => `${colour} ${String(dash)} ${shape}`);
  expect(new Set(combinations).size).toBe(126);
});

test('a treatment of another trial is refused', () => {
  expect(() => treatmentStyle(trialOf(2), 'elsewhere')).toThrow('got elsewhere');
});

// Paper and its shade of src/styles/tokens.css, by day and by night.
test.each(['#fbf8f0', '#f4eee0', '#171816', '#22231f'])('every colour stands out 3:1 against %s', (paper) => {
  for (const colour of COLOURS) expect(contrast(colour, paper), colour).toBeGreaterThanOrEqual(3);
});

// Machado, Oliveira & Fernandes (2009), IEEE Trans. Vis. Comput. Graph. 15, 1291–1298, severity 1.0 (values from memory);
// distances in Oklab (Ottosson 2020, from memory), where 0.02 is about the least difference to be seen.
test.each([
  [
    'all cones',
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  ],
  [
    'no long cones',
    [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  ],
  [
    'no middle cones',
    [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  ],
  [
    'no short cones',
    [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  ],
])('colours are told apart with %s', (_, matrix) => {
  const seen = COLOURS.map((colour) => oklab(matrix.map((row) => dot(row, linear(colour)))));
  seen.forEach((a, index) =>
    seen.slice(0, index).forEach((b) => {
      expect(Math.hypot(...a.map((value, axis) => value - (b[axis] ?? 0)))).toBeGreaterThan(0.07);
    }),
  );
});

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);

function linear(colour: string): number[] {
  return [1, 3, 5].map((start) => {
    const value = parseInt(colour.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4; // sRGB, IEC 61966-2-1
  });
}

/** WCAG 2.2, contrast ratio. */
function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [a, b]
    .map((colour) => dot([0.2126, 0.7152, 0.0722], linear(colour)) + 0.05)
    .sort((x, y) => y - x);
  return light / dark;
}

function oklab(rgb: readonly number[]): number[] {
  const inside = rgb.map((value) => Math.min(1, Math.max(0, value)));
  const cones = [
    [0.4122214708, 0.5363325363, 0.0514459929],
    [0.2119034982, 0.6806995451, 0.1073969566],
    [0.0883024619, 0.2817188376, 0.6299787005],
  ].map((row) => Math.cbrt(dot(row, inside)));
  return [
    [0.2104542553, 0.793617785, -0.0040720468],
    [1.9779984951, -2.428592205, 0.4505937099],
    [0.0259040371, 0.7827717662, -0.808675766],
  ].map((row) => dot(row, cones));
}
