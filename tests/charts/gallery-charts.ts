import type { Chart } from '../../src/charts/chart.ts';
import { differences } from '../../src/charts/differences.ts';
import { germinationCurves } from '../../src/charts/germination-curves.ts';
import { units } from '../../src/charts/units.ts';
import { lotCurves } from '../../src/charts/lot-curves.ts';
import { lotGermination } from '../../src/charts/lot-germination.ts';
import { masses } from '../../src/charts/masses.ts';
import { pooledChart } from '../../src/charts/pooled.ts';
import { trait } from '../../src/charts/trait.ts';
import { FOUR, pool } from '../support/pooled-trials.ts';
import { inventTests } from './invent-tests.ts';
import { survival } from '../../src/charts/survival.ts';
import { inventSeries } from './invented-series.ts';
import { invent, inventHeights, inventWeighings } from './invented.ts';
import type { Words } from '../../src/wording/words.ts';

const LONG = 'Sealed jar with silica gel at the back of the fridge, opened twice';

/** Every kind of chart on invented data, the awkward cases included. */
export function galleryCharts(words: Words): Record<string, Chart> {
  const charts: Record<string, Chart> = {};
  const two = invent({
    treatments: [
      ['Paper packet in the shed', 0.62],
      ['Sealed jar with silica gel in the fridge', 0.88],
    ],
    matters: 10,
    parts: {},
  });
  const six = invent({
    treatments: [
      ['Dry, as it came', 0.55],
      ['Soaked 1 h', 0.6],
      ['Soaked 6 h', 0.68],
      ['Soaked 12 h', 0.82],
      ['Soaked 24 h', 0.74],
      [LONG, 0.3],
    ],
    trays: 4,
    matters: 10,
  });
  const one = invent({
    treatments: [
      ['Packet', 0.8],
      ['Jar', 0.84],
    ],
    trays: 1,
    days: [4, 7, 10.5, 21],
  });
  const ends = invent({
    treatments: [
      ['Nothing came up', 0],
      ['Everything came up', 1],
    ],
    trays: 3,
  });
  const out = {
    ...two.result,
    days: { leek: 9 },
    leftOut: [{ sowing: 'leek-t1-2', reason: 'deviation' as const, what: 'dropped' }],
  };

  const series: readonly (readonly [string, Parameters<typeof inventSeries>[0], readonly number[]])[] = [
    ['two treatments', { 'Paper packet in the shed': -0.5, Jar: -0.1 }, [0, 1, 2, 3, 4, 5]],
    ['six treatments', { A: -0.9, B: -0.6, C: -0.4, D: -0.2, E: 0, [LONG]: -0.3 }, [0, 1, 2, 5, 10]],
    ['one', { Jar: -0.4 }, [0, 0.5, 1, 2.5]],
    ['days, no test at the start', { Warm: -30, Warmer: -60 }, [5 / 365.25, 10 / 365.25, 20 / 365.25]],
    ['two tests only', { Packet: -0.5, Jar: -0.1 }, [0, 1]],
  ];
  for (const [name, slopes, times] of series) {
    const made = inventSeries(slopes, times);
    charts[`survival: ${name}`] = survival(made.trial, made.analysis, made.result, 'leek', words);
  }

  charts['curves: two treatments'] = germinationCurves(two.trial, two.analysis, two.result, 'leek', words);
  charts['curves: one left out'] = germinationCurves(two.trial, two.analysis, out, 'leek', words);
  charts['curves: six treatments'] = germinationCurves(six.trial, six.analysis, six.result, 'leek', words);
  charts['curves: one tray each'] = germinationCurves(one.trial, one.analysis, one.result, 'leek', words);
  charts['curves: none and all'] = germinationCurves(ends.trial, ends.analysis, ends.result, 'leek', words);
  const twelve = invent({
    treatments: Array.from({ length: 12 }, (_, i) => [
      i === 3 ? LONG : i ? `Soaked ${i} h` : 'Dry',
      ((i * 7) % 12) / 12 + 0.05,
    ]),
    trays: 3,
  });
  charts['curves: twelve'] = germinationCurves(twelve.trial, twelve.analysis, twelve.result, 'leek', words);
  charts['differences: one'] = differences(two.trial, two.analysis, two.result, words);
  charts['differences: five'] = differences(six.trial, six.analysis, six.result, words);
  charts['differences: one tray each'] = differences(one.trial, one.analysis, one.result, words);
  const lots = invent({
    treatments: six.trial.treatments.slice(0, 4).map(({ label }, i) => [label, 0.5 + i * 0.08]),
    lots: ['leek', 'cress', 'onion', 'beet'],
    matters: 5,
  });
  const names = lots.trial.lots.map(({ id }) => id);
  charts['curves: four lots'] = lotCurves(lots.trial, lots.analysis, lots.result, names, words);
  charts['units: four lots'] = units(lots.trial, lots.analysis, lots.result, names, words);
  charts['differences: twelve'] = differences(lots.trial, lots.analysis, lots.result, words);
  const wide = {
    ...six.result,
    comparisons: six.result.comparisons.map((c, i) =>
      i === 2 ? { ...c, interval: { ...c.interval!, lower: -99, upper: 100 } } : c,
    ),
  };
  charts['differences: one far'] = differences(six.trial, six.analysis, wide, words);
  charts['units: two'] = units(two.trial, two.analysis, two.result, 'leek', words);
  charts['units: six'] = units(six.trial, six.analysis, six.result, 'leek', words);
  charts['units: one each'] = units(one.trial, one.analysis, one.result, 'leek', words);
  charts['units: none and all'] = units(ends.trial, ends.analysis, ends.result, 'leek', words);
  const blocks = invent({
    treatments: [
      ['Packet', 0.7],
      ['Jar', 0.8],
      ['Freezer', 0.9],
    ],
    trays: 6,
    blocks: true,
  });
  charts['units: blocks'] = units(blocks.trial, blocks.analysis, blocks.result, 'leek', words);
  const heights = inventHeights([
    ['Packet', 38],
    ['Sealed jar in the fridge', 46],
  ]);
  charts['trait: two'] = trait(heights.trial, heights.analysis, heights.result, 'leek', words);
  charts['trait: differences'] = differences(heights.trial, heights.analysis, heights.result, words);
  const single = inventHeights(
    [
      ['Packet', 38],
      ['Jar', 46],
      ['Freezer', 20],
    ],
    1,
    30,
  );
  charts['trait: one tray each'] = trait(single.trial, single.analysis, single.result, 'leek', words);
  const weighed = inventWeighings();
  const chart = masses(weighed.trial, weighed.analysis, words);
  if (chart) charts['masses'] = chart;
  const lot = lotGermination('Leek', inventTests(), words);
  if (lot) charts['lot: series and two trials'] = lot;
  charts['pooled: four trials'] = pooledChart(pool(FOUR), words);
  charts['pooled: two, side by side'] = pooledChart(pool(FOUR.slice(0, 2)), words);
  return charts;
}
