import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { INK, LEADING, TEXT } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';
import type { Course } from './germination-course.ts';
import { treatmentStyle } from './treatment-style.ts';

const SAMPLE = 48; // length of a line in the key
const GAP = 10;
const BETWEEN = 6;

/**
 * The key of a plot: a row for each treatment with its line, mark and label, and one for sowings left out.
 * Goes down from y = 0; the plot moves it above itself.
 *
 * @param box where the key starts and how wide it is
 */
export function treatmentKey(
  trial: Trial,
  courses: readonly Course[],
  words: Words,
  box: { readonly x: number; readonly width: number },
) {
  let height = 3;
  const row = (label: string) => {
    const text = fitText(label, box.width - SAMPLE - GAP, TEXT, 2);
    const y = height + LEADING / 2;
    height += text.length * LEADING + BETWEEN;
    return { y, text, x: box.x, x2: box.x + SAMPLE, middle: box.x + SAMPLE / 2, words: box.x + SAMPLE + GAP };
  };
  const rows = courses.map(({ treatment }) => ({
    ...treatmentStyle(trial, treatment),
    ...row(words.treatmentLabel(trial, treatment)),
  }));
  const anyLeftOut = courses.some(({ sowings }) => sowings.some(({ leftOut }) => leftOut));
  const leftOut = anyLeftOut ? [{ colour: INK, dash: LEFT_OUT_DASH, ...row(words.ui['chart.leftOut']) }] : [];
  return { rows, leftOut, height };
}

/** Thin lines of sowings that were left out. */
export const LEFT_OUT_DASH = [1.5, 2.5];

/** Widths of a treatment's line and of a sowing's. */
export const THICK = 2.75;
export const THIN = 0.9;

const sample: Encoding = {
  x: place('x'),
  x2: { field: 'x2' },
  y: place('y'),
  stroke: raw('colour'),
  strokeDash: raw('dash'),
};

/** Draws the datasets `key` and `keyLeftOut`, the rows of `treatmentKey`. */
export const KEY_LAYERS: Layers = [
  { name: 'keyLines', data: { name: 'key' }, mark: { type: 'rule', strokeWidth: THICK }, encoding: sample },
  { name: 'keyThin', data: { name: 'keyLeftOut' }, mark: { type: 'rule', strokeWidth: THIN }, encoding: sample },
  {
    name: 'keyMarks',
    data: { name: 'key' },
    mark: { type: 'point', size: 56 },
    encoding: {
      x: place('middle'),
      y: place('y'),
      stroke: raw('colour'),
      fill: raw('fill'),
      shape: raw('shape'),
    },
  },
  ...['key', 'keyLeftOut'].map((name) => ({
    name: `${name}Words`,
    data: { name },
    mark: { type: 'text' as const, baseline: 'middle' as const },
    encoding: { x: place('words'), y: place('y'), text: raw('text') },
  })),
];
