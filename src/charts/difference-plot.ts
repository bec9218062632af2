import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import { sentence } from '../wording/sentence.ts';
import type { Words } from '../wording/words.ts';
import { LEADING } from './chart-theme.ts';
import { DIFFERENCE_LAYERS } from './difference-layers.ts';
import { differenceWays } from './difference-ways.ts';
import { isOfOneTreatment, rangeInWords, tooCoarse, type Difference } from './differences.ts';
import { intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { LABEL_GAP, LABEL_WIDTH, PLOT_WIDTH, RIGHT, rowLayout } from './row-layout.ts';
import { stripLabel } from './strip-label.ts';
import { treatmentStyle } from './treatment-style.ts';
import { scaleParams } from './value-axis.ts';

/** The picture of `differences`: a row for each, its words at the left. */
export function differencePlot(trial: Trial, rows: readonly Difference[], scale: Scale, words: Words): TopLevelSpec {
  const layout = rowLayout(rows.map((row) => ({ ...rowText(trial, row, rows, words), picture: 30 })));
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
    padding: { left: LABEL_WIDTH + LABEL_GAP, top: 10 + above.length * LEADING, right: RIGHT, bottom: 48 },
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

function rowText(trial: Trial, { result, comparison }: Difference, rows: readonly Difference[], words: Words) {
  const { lot, lots, treatment, stored, estimate } = comparison;
  const notes: string[] = [];
  const names = [words.treatmentLabel(trial, treatment)];
  if (lot === 'all') {
    names.push(words.say('chart.togetherOf', { lots: words.counted(lots?.length ?? trial.lots.length, 'lot') }));
  } else if (trial.lots.length > 1) names.push(words.lotName(trial, lot));
  // Where all rows are of one treatment, the lot tells them apart.
  const [label = '', ...others] = isOfOneTreatment(rows) ? names.slice(-1) : names;
  notes.push(...others);
  if (new Set(rows.map((row) => row.result)).size > 1) notes.push(words.outcomeTitle(trial, result));
  if (stored !== null) notes.push(words.say('chart.storedFor', { time: words.quantity(stored, 'years') }));
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
