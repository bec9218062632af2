import { differences } from '../../charts/differences.ts';
import { WIDTH } from '../../charts/chart-theme.ts';
import type { Chart } from '../../charts/chart.ts';
import { germinationCurves } from '../../charts/germination-curves.ts';
import { lotCurves } from '../../charts/lot-curves.ts';
import { renderSvg } from '../../charts/render-svg.ts';
import { WIDE } from '../../charts/row-layout.ts';
import { survival } from '../../charts/survival.ts';
import { trait } from '../../charts/trait.ts';
import { units } from '../../charts/units.ts';
import type { Group, Result } from '../../analysis/analysis.ts';
import type { About } from './about.ts';

/** Unit of a broad drawing, mm: its letters are of the size of small print. */
const UNIT = 0.21;
/** As many treatments as are told apart in one small plot. */
const MOST_IN_ONE_PLOT = 6;
/** Of more comparisons than these only those of lots together are drawn, where there are any. */
const MANY = 8;
/** More differences than these are no longer compared by eye. */
const MOST_ROWS = 16;

/** A chart, drawn for paper, under the name of its picture. */
export interface DrawnChart {
  readonly name: string;
  readonly chart: Chart;
  readonly svg: string;
  /** Width of a drawing that is broader than on a phone, mm. */
  readonly broad: number | null;
}

export interface SummaryCharts {
  readonly differences: readonly DrawnChart[];
  /** A lot each: how the seed came up, or what was measured. */
  readonly courses: readonly DrawnChart[];
  /** True where there are too many differences for a chart. */
  readonly undrawn: boolean;
}

/** The charts of the primary outcome. */
export async function summaryCharts(about: About): Promise<SummaryCharts> {
  const { trial, analysis, words } = about;
  const result = analysis.results.find((found) => found.primary) ?? analysis.results[0];
  if (!result) return { differences: [], courses: [], undrawn: false };
  const drawnDifferences = fewEnough(result);
  const compared = drawnDifferences.comparisons.some(({ estimate }) => estimate !== null);
  const lots = [...new Set(result.groups.map(({ lot }) => lot))];
  const courses = areSmallPlots(result, lots)
    ? [lotCurves(trial, analysis, result, lots, words, WIDE)]
    : lots.map((lot) => courseOf(about, result, lot));
  return {
    differences: compared
      ? [await drawn('differences', differences(trial, analysis, drawnDifferences, words, WIDE))]
      : [],
    courses: await Promise.all(courses.map((chart, index) => drawn(`course-${index + 1}`, chart))),
    undrawn: drawnDifferences.comparisons.length < result.comparisons.length,
  };
}

/** Of many comparisons a chart shows those of lots together; of very many without such none: the table has them. */
function fewEnough(result: Result): Result {
  const together = result.comparisons.filter(({ lot }) => lot === 'all');
  const shown = together.length > 0 && result.comparisons.length > MANY ? together : result.comparisons;
  return { ...result, comparisons: shown.length <= MOST_ROWS ? shown : [] };
}

/** Several lots, each of few treatments counted in one test, share a chart. */
function areSmallPlots({ measure, groups }: Result, lots: readonly string[]): boolean {
  const all = lots.map((lot) => groups.filter((group) => group.lot === lot));
  const isPlot = (own: readonly Group[]) => own.length <= MOST_IN_ONE_PLOT && new Set(own.map(({ stored }) => stored)).size === 1; // prettier-ignore
  return lots.length > 1 && measure !== 'storage' && measure !== 'trait' && measure !== 'moisture' && all.every(isPlot);
}

/** Day by day where seeds were counted once; else, as in a storage series, every tray or plant. */
function courseOf({ trial, analysis, words }: About, result: Result, lot: string): Chart {
  const tests = [...new Set(result.groups.filter((group) => group.lot === lot).map(({ stored }) => stored))];
  if (result.measure === 'storage') return survival(trial, analysis, result, lot, words);
  if (result.measure === 'trait') return trait(trial, analysis, result, lot, words);
  if (result.measure === 'moisture' || tests.length > 1) return units(trial, analysis, result, lot, words);
  return germinationCurves(trial, analysis, result, lot, words, tests[0] ?? null, WIDE);
}

async function drawn(name: string, chart: Chart): Promise<DrawnChart> {
  const svg = await renderSvg(chart.spec, name, '#fff');
  const width = Number(/width="([\d.]+)"/.exec(svg)?.[1]);
  const broad = width > WIDTH ? width * UNIT : null;
  return { name, chart, svg: svg.replace('<svg ', '<svg color="#1d2427" '), broad };
}
