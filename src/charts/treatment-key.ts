import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { INK, LEADING, TEXT } from './chart-theme.ts';
import { fitText } from './fit-text.ts';
import type { Course } from './germination-course.ts';
import { treatmentStyle } from './treatment-style.ts';

const SAMPLE = 42; // length of a line in the key
const GAP = 10;
const BETWEEN = 6;

/**
 * The key of a plot: a row for each treatment with its line, mark and label, and one for sowings left out.
 * Drawn from y = 0 downwards; the plot moves it above itself.
 *
 * @param box where the key starts and how wide it is
 */
export function treatmentKey(
  trial: Trial,
  courses: readonly Course[],
  words: Words,
  box: { readonly x: number; readonly width: number },
) {
  const entries = courses.map(({ treatment }) => ({
    ...treatmentStyle(trial, treatment),
    width: 2.75,
    label: words.treatmentLabel(trial, treatment),
  }));
  const marks = entries.length;
  if (courses.some(({ sowings }) => sowings.some(({ leftOut }) => leftOut))) {
    const leftOut = {
      colour: INK,
      fill: INK,
      dash: [1, 3],
      shape: 'circle',
      width: 1,
      label: words.ui['chart.leftOut'],
    };
    entries.push(leftOut);
  }

  let height = 0;
  const rows = entries.map(({ label, ...look }) => {
    const text = fitText(label, box.width - SAMPLE - GAP, TEXT, 2);
    const y = height + LEADING / 2;
    height += text.length * LEADING + BETWEEN;
    return { ...look, y, text, x: box.x, x2: box.x + SAMPLE, middle: box.x + SAMPLE / 2, words: box.x + SAMPLE + GAP };
  });
  return { height, lines: rows, marks: rows.slice(0, marks) };
}
