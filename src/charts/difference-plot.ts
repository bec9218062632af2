import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import { sentence } from '../wording/sentence.ts';
import type { Words } from '../wording/words.ts';
import { LEADING } from './chart-theme.ts';
import { DIFFERENCE_LAYERS } from './difference-layers.ts';
import { differenceWays } from './difference-ways.ts';
import { placeOf } from './place-of.ts';
import { isOfOneTreatment, rangeInWords, tooCoarse, type Difference } from './differences.ts';
import { intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { LABEL_GAP, PLOT_WIDTH, RIGHT, rowLayout, WIDE, type RowRoom } from './row-layout.ts';
import { storedNote } from './stored-note.ts';
import { stripLabel } from './strip-label.ts';
import { treatmentStyle } from './treatment-style.ts';
import { scaleParams } from './value-axis.ts';

/**
 * The picture of `differences`: a row for each, its words at the left; across a sheet its notes are one line.
 *
 * @param placed true where the lot of all rows is said elsewhere
 */
export function differencePlot(
  trial: Trial,
  rows: readonly Difference[],
  scale: Scale,
  words: Words,
  room: RowRoom,
  placed: boolean,
): TopLevelSpec {
  const layout = rowLayout(
    rows.map((row) => {
      const { label, notes } = rowText(trial, row, rows, words, placed);
      return { label, notes: room === WIDE ? [notes.join(' · ')] : notes, picture: 30 };
    }),
    room,
  );
  const estimates = rows.map(({ comparison }, index) => {
    const { estimate, interval, treatment } = comparison;
    return {
      estimate: tooCoarse(comparison) ? null : estimate,
      interval,
      style: treatmentStyle(trial, treatment),
      y: layout.rows[index]?.middle ?? 0,
    };
  });
  const above = stripLabel(stripText(rows, words), scale);
  return {
    width: PLOT_WIDTH,
    height: layout.height,
    padding: { left: room.words + LABEL_GAP, top: 10 + above.length * LEADING, right: RIGHT, bottom: 48 },
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      ...intervalMarks(estimates, scale),
      strips: rows.flatMap(({ result: { matters } }, index) =>
        matters === null ? [] : [{ ...layout.rows[index], lower: -matters, upper: matters }],
      ),
      zero: [{ zero: 0, y: -4, y2: layout.height }],
      above,
      ways: differenceWays(rows[0]?.result, layout.height + 40, words),
    },
    layer: DIFFERENCE_LAYERS,
  };
}

function rowText(
  trial: Trial,
  { result, comparison }: Difference,
  rows: readonly Difference[],
  words: Words,
  placed: boolean,
) {
  const { treatment, stored, estimate } = comparison;
  const notes: string[] = [];
  const names = [words.treatmentLabel(trial, treatment)];
  const place = placeOf(trial, comparison, words);
  if (place !== null && !placed) names.push(place);
  // Where all rows are of one treatment, the lot tells them apart.
  const [label = '', ...others] = isOfOneTreatment(rows) ? names.slice(-1) : names;
  notes.push(...others);
  if (new Set(rows.map((row) => row.result)).size > 1) notes.push(words.outcomeTitle(trial, result));
  notes.push(...storedNote(stored, words));
  notes.push(words.verdict(result, comparison).words);
  if (!tooCoarse(comparison)) notes.push(words.difference(estimate, result));
  const range = rangeInWords(result, comparison, words);
  if (range !== null) notes.push(range);
  return { label: sentence(label), notes };
}

/** What the strip means, where there is one. */
function stripText(rows: readonly Difference[], words: Words): string | null {
  const margins = rows.filter(({ result }) => result.matters !== null);
  if (margins.length === 0) return null;
  const unfixed = margins.some(({ comparison }) => comparison.equivalence?.fixedBeforehand === false);
  return words.ui[unfixed ? 'chart.tooSmallUnfixed' : 'chart.tooSmall'];
}
