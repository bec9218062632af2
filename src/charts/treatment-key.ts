import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import type { Course } from './germination-course.ts';
import { keyRows, type KeyBox } from './key-rows.ts';
import { CONTROL_STYLE } from './series-style.ts';
import { treatmentStyle } from './treatment-style.ts';

/**
 * The key of a plot: a row for each treatment with its line, mark and label, and one for sowings left out.
 * Goes down from y = 0; the plot moves it above itself.
 *
 * @param box where the key starts and how wide it is
 */
export function treatmentKey(trial: Trial, courses: readonly Course[], words: Words, box: KeyBox) {
  const treatments = courses.map(({ treatment }) => ({
    label: words.treatmentLabel(trial, treatment),
    style: treatmentStyle(trial, treatment),
  }));
  const anyLeftOut = courses.some(({ sowings }) => sowings.some(({ leftOut }) => leftOut));
  const out = { ...CONTROL_STYLE, dash: LEFT_OUT_DASH };
  const { rows, height } = keyRows(
    [...treatments, ...(anyLeftOut ? [{ label: words.ui['chart.leftOut'], style: out }] : [])],
    box,
  );
  return { rows: rows.slice(0, treatments.length), leftOut: rows.slice(treatments.length), height };
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
