import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { INK, LEADING, TEXT } from './chart-theme.ts';
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
