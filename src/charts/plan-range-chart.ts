import type { PlanAnswer } from '../analysis/planning/plan-answer.ts';
import { planAmounts, type PlanSpeech } from '../wording/plan/plan-amounts.ts';
import { INK, LEADING, PALE, PAPER, WIDTH } from './chart-theme.ts';
import type { DrawnChart } from './drawn-chart.ts';
import { niceScale } from './nice-scale.ts';
import { drawing, mark } from './svg-marks.ts';

interface Row {
  readonly label: string;
  readonly truth: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * How far the range would reach on average where the difference that matters is there and where there is none, against the
 * strip that is too small to matter. Drawn without Vega.
 *
 * @param unit of a trait: "mm", "g"; empty otherwise
 * @returns null before the simulation is done, and where no crop by itself can tell
 */
export function planRangeChart(answer: PlanAnswer, unit: string, speech: PlanSpeech): DrawnChart | null {
  const { design, treated, simulated } = answer;
  const crop = simulated?.crop ?? null;
  if (crop === null) return null;
  const { say, number } = speech;
  const amounts = planAmounts(design.measure, unit, speech);
  const rows: Row[] = [
    { label: say('planPage.range.there', {}), truth: treated - design.base, ...crop.range },
    { label: say('planPage.range.none', {}), truth: 0, ...crop.rangeNone },
  ];
  const cells = rows.map(({ label, truth, lower, upper }) => [
    label,
    amounts.size(truth),
    say('chart.fromTo', { lower: amounts.size(lower), upper: amounts.size(upper) }),
  ]);
  return {
    title: say('planPage.range.title', { size: amounts.size(crop.halfWidth.value) }),
    subtitle: say('planPage.range.subtitle', { size: amounts.asGiven(design.matters) }),
    description: say('planPage.range.description', {
      values: cells.map(([label, , reach]) => `${label}: ${reach}`).join('; '),
    }),
    table: {
      head: [say('planPage.range.truth', {}), say('planPage.range.difference', {}), say('planPage.range.reach', {})],
      rows: cells,
    },
    svg: draw(rows, design.matters, say(`planPage.range.axis.${design.measure}`, { unit }), number),
  };
}

const [LEFT, RIGHT, TOP, STEP] = [20, WIDTH - 20, 4, 52];

function draw(rows: readonly Row[], matters: number, axis: string, number: PlanSpeech['number']): string {
  const scale = niceScale([-matters, matters, ...rows.flatMap(({ lower, upper }) => [lower, upper])], 8);
  const x = (value: number) => LEFT + ((value - scale.low) / (scale.high - scale.low)) * (RIGHT - LEFT);
  const bottom = TOP + rows.length * STEP + 6;
  return drawing(bottom + 42, [
    mark('rect', {
      x: x(-matters),
      width: x(matters) - x(-matters),
      y: TOP,
      height: bottom - TOP,
      'fill-opacity': PALE,
    }),
    mark('line', { x1: x(0), x2: x(0), y1: TOP, y2: bottom, stroke: INK }),
    ...rows.flatMap(({ label, truth, lower, upper }, index) => {
      const y = TOP + index * STEP + LEADING + 18;
      return [
        mark('text', { x: LEFT, y: y - 16 }, label),
        mark('line', { x1: x(lower), x2: x(upper), y1: y, y2: y, stroke: INK, 'stroke-width': 2 }),
        mark('circle', { cx: x(truth), cy: y, r: 5, fill: PAPER, stroke: INK, 'stroke-width': 2 }),
      ];
    }),
    ...scale.ticks.flatMap((tick) => [
      mark('line', { x1: x(tick), x2: x(tick), y1: bottom, y2: bottom + 5, stroke: INK }),
      mark('text', { x: x(tick), y: bottom + 19, 'text-anchor': 'middle' }, number(tick)),
    ]),
    mark('text', { x: (LEFT + RIGHT) / 2, y: bottom + 37, 'text-anchor': 'middle' }, axis),
  ]);
}
