import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { UiKey, Words } from '../wording/words.ts';
import { INK, LEADING, PALE, SMALL } from './chart-theme.ts';
import { rangeInWords, tooCoarse, type Difference } from './differences.ts';
import { place, raw, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';
import { INTERVAL_LAYERS, intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { LABEL_GAP, LABEL_WIDTH, PLOT_WIDTH, RIGHT, ROW_WORDS, rowLayout } from './row-layout.ts';
import { textWidth } from './text-width.ts';
import { treatmentStyle } from './treatment-style.ts';
import { scaleParams, valueAxis } from './value-axis.ts';

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
  const above = stripLabel(rows, scale, words);
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
      ways: waysOf(rows, layout.height + 40, words),
    },
    layer: LAYERS,
  };
}

function rowText(trial: Trial, { result, comparison }: Difference, rows: readonly Difference[], words: Words) {
  const { lot, lots, treatment, stored, estimate } = comparison;
  const notes: string[] = [];
  if (lot === 'all') {
    notes.push(words.say('chart.togetherOf', { lots: words.counted(lots?.length ?? trial.lots.length, 'lot') }));
  } else if (trial.lots.length > 1) notes.push(words.lotName(trial, lot));
  if (new Set(rows.map((row) => row.result)).size > 1) notes.push(words.outcomeTitle(trial, result));
  if (stored !== null) notes.push(words.say('chart.storedFor', { time: words.quantity(stored, 'years') }));
  notes.push(words.verdict(result, comparison).words);
  if (!tooCoarse(comparison)) notes.push(words.difference(estimate, result));
  const range = rangeInWords(result, comparison, words);
  if (range !== null) notes.push(range);
  return { label: words.treatmentLabel(trial, treatment), notes };
}

/** What the strip means, written above it, kept inside the picture. */
function stripLabel(rows: readonly Difference[], { low, high }: Scale, words: Words) {
  const margins = rows.filter(({ result }) => result.matters !== null);
  if (margins.length === 0) return [];
  const unfixed = margins.some(({ comparison }) => comparison.equivalence?.fixedBeforehand === false);
  const lines = fitText(words.ui[unfixed ? 'chart.tooSmallUnfixed' : 'chart.tooSmall'], PLOT_WIDTH, SMALL, 2);
  const half = Math.max(...lines.map((line) => textWidth(line, SMALL))) / 2;
  const x = Math.min(PLOT_WIDTH - half, Math.max(half, ((0 - low) / (high - low)) * PLOT_WIDTH));
  return lines.map((text, index) => ({ x, y: -10 - (lines.length - 1 - index) * LEADING, text }));
}

/** Under the axis: its two directions, and between them what it counts. */
function waysOf(rows: readonly Difference[], y: number, words: Words) {
  const [less, more, unit] = axisWords(rows[0]?.result, words);
  return [
    { x: 0, y, text: less, align: 'left' },
    { x: PLOT_WIDTH / 2, y, text: unit, align: 'center' },
    { x: PLOT_WIDTH, y, text: more, align: 'right' },
  ];
}

function axisWords(result: Difference['result'] | undefined, words: Words): [string, string, string] {
  const say = (less: UiKey, more: UiKey, unit: string): [string, string, string] => [
    words.ui[less],
    words.ui[more],
    unit,
  ];
  switch (result?.measure) {
    case 'germination':
      return say('chart.fewer', 'chart.more', words.ui['chart.perHundred']);
    case 't50':
    case 'mgt':
      return say('chart.earlier', 'chart.later', words.unitName(result.unit));
    default:
      return say('chart.lower', 'chart.higher', words.unitName(result?.unit ?? ''));
  }
}

const LAYERS: Layers = [
  {
    name: 'strips',
    data: { name: 'strips' },
    mark: { type: 'rect', color: INK, opacity: PALE },
    encoding: { x: valueAxis('lower'), x2: { field: 'upper' }, y: place('top'), y2: { field: 'bottom' } },
  },
  {
    name: 'zero',
    data: { name: 'zero' },
    mark: { type: 'rule' },
    encoding: { x: valueAxis('zero'), y: place('y'), y2: { field: 'y2' } },
  },
  ...INTERVAL_LAYERS,
  ...ROW_WORDS,
  {
    name: 'above',
    data: { name: 'above' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: { x: place('x'), y: place('y'), text: raw('text') },
  },
  ...(['left', 'center', 'right'] as const).map((align) => ({
    name: `ways-${align}`,
    data: { name: 'ways' },
    transform: [{ filter: `datum.align === '${align}'` }],
    mark: { type: 'text' as const, fontSize: SMALL, align },
    encoding: { x: place('x'), y: place('y'), text: raw('text') },
  })),
];
