import { chancesByUnits, type ChanceByUnits } from '../analysis/planning/chances-by-units.ts';
import type { PlanAnswer } from '../analysis/planning/plan-answer.ts';
import type { Rate } from '../analysis/planning/simulated.ts';
import type { PlanSpeech } from '../wording/plan/plan-amounts.ts';
import { INK, PALE, PAPER, SMALL, WIDTH } from './chart-theme.ts';
import type { DrawnChart } from './drawn-chart.ts';
import { drawing, mark } from './svg-marks.ts';

/**
 * The chance to show the difference that matters against the number of trays: small dots by formula, an open diamond where
 * the plan stands, simulated, with two standard errors to either side. Drawn without Vega.
 */
export function chanceChart(answer: PlanAnswer, { say, number }: PlanSpeech): DrawnChart {
  const { design, needed, simulated } = answer;
  const points = chancesByUnits(design, needed);
  const here = simulated?.crop?.shown ?? null;
  const percent = (share: number) => number(Math.round(100 * share));
  const trays = (units: number) => say(units === 1 ? 'planPage.tray' : 'answer.trays', { count: number(units) });
  const rows = points.map(({ units, chance }) => [
    trays(units),
    percent(chance),
    units === design.units && here ? percent(here.share) : '',
  ]);
  return {
    title: say('planPage.chance.title', { units: trays(design.units) }),
    subtitle: say('planPage.chance.subtitle', {}),
    description: say('planPage.chance.description', {
      values: points.map(({ units, chance }) => `${trays(units)}: ${percent(chance)}`).join('; '),
    }),
    table: {
      head: [say('planPage.chance.units', {}), say('answer.table.formula', {}), say('answer.table.simulated', {})],
      rows,
    },
    svg: draw(points, design.units, here, {
      axis: say('planPage.chance.units', {}),
      enough: say('planPage.chance.enough', {}),
    }),
  };
}

const [LEFT, RIGHT, TOP, PLOT] = [34, WIDTH - 10, 12, 160];

function draw(
  points: readonly ChanceByUnits[],
  here: number,
  simulated: Rate | null,
  labels: { readonly axis: string; readonly enough: string },
): string {
  const most = points.length;
  const x = (units: number) => LEFT + 10 + ((units - 1) / (most - 1)) * (RIGHT - LEFT - 20);
  const y = (chance: number) => TOP + PLOT * (1 - Math.min(1, Math.max(0, chance)));
  const every = Math.ceil(most / 14);
  const ticks = points.filter(({ units }) => (units - 1) % every === 0);
  return drawing(TOP + PLOT + 42, [
    ...[0, 0.2, 0.4, 0.6, 0.8, 1].flatMap((chance) => [
      mark('line', { x1: LEFT, x2: RIGHT, y1: y(chance), y2: y(chance), stroke: INK, 'stroke-opacity': PALE }),
      mark('text', { x: LEFT - 6, y: y(chance) + 4, 'text-anchor': 'end' }, String(100 * chance)),
    ]),
    mark('line', { x1: LEFT, x2: RIGHT, y1: y(0.8), y2: y(0.8), stroke: INK, 'stroke-dasharray': '4 3' }),
    mark('text', { x: LEFT + 4, y: y(0.8) - 5, 'font-size': SMALL }, labels.enough),
    mark('path', {
      d: points
        .map(({ units, chance }, index) => `${index === 0 ? 'M' : 'L'}${x(units).toFixed(1)} ${y(chance).toFixed(1)}`)
        .join(''),
      fill: 'none',
      stroke: INK,
    }),
    ...points.map(({ units, chance }) => mark('circle', { cx: x(units), cy: y(chance), r: 2.6 })),
    ...ticks.map(({ units }) =>
      mark('text', { x: x(units), y: TOP + PLOT + 18, 'text-anchor': 'middle' }, String(units)),
    ),
    mark('text', { x: (LEFT + RIGHT) / 2, y: TOP + PLOT + 37, 'text-anchor': 'middle' }, labels.axis),
    ...(simulated === null ? [] : diamond(x(here), y, simulated)),
  ]);
}

function diamond(x: number, y: (chance: number) => number, { share, error }: Rate): string[] {
  const at = y(share);
  return [
    mark('line', { x1: x, x2: x, y1: y(share - 2 * error), y2: y(share + 2 * error), stroke: INK, 'stroke-width': 2 }),
    mark('path', {
      d: `M${x - 7} ${at}L${x} ${at - 7}L${x + 7} ${at}L${x} ${at + 7}Z`,
      fill: PAPER,
      stroke: INK,
      'stroke-width': 2,
    }),
  ];
}
