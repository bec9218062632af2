import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import { luckStrip } from '../../src/charts/luck-strip.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { detectableMean } from '../../src/statistics/detectable-mean.ts';
import { unitsForMean } from '../../src/statistics/units-for-mean.ts';
import { settlePlot } from '../../src/charts/settle-plot.ts';
import type { Chart } from '../../src/charts/chart.ts';
import { settleTables } from '../../src/wording/tables/settle-tables.ts';
import { germinationTrial, makeLot, makeOutcome } from '../support/make-trial.ts';
import { luckTable } from '../../src/wording/tables/luck-table.ts';
import type { Comparison, Result } from '../../src/analysis/analysis.ts';
import type { Trial } from '../../src/trial/trial.ts';
import type { Words } from '../../src/wording/words.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { demoTrial, demoTrials } from '../files/prose/prose-said.ts';

const words = wordsFor('en');
const primaryOf = (id: string) => {
  const trial = demoTrial(id);
  const result = analyse(trial).results.find(({ primary }) => primary);
  const comparison = result?.comparisons[0];
  if (!result || !comparison) throw new Error(`${id} compares nothing`);
  return { trial, result, comparison };
};
const drawn = (of: (...args: [Trial, Result, Comparison, Words]) => Chart | null, id: string) => {
  const { trial, result, comparison } = primaryOf(id);
  return of(trial, result, comparison, words) as Chart;
};

test('the strip says what it shows, with every value', () => {
  const { title, subtitle, description, table, spec } = drawn(luckStrip, 'carrots-under-vermiculite');
  expect({ title, subtitle, description }).toMatchInlineSnapshot(`
    {
      "description": "Strip of differences. As it was: 9 more per 100. Dealt anew: 14 fewer per 100, 13 fewer per 100, 12 fewer per 100, 12 fewer per 100, 11 fewer per 100, 10 fewer per 100, 8 fewer per 100, 7 fewer per 100, 6 fewer per 100, 5 fewer per 100, 4 fewer per 100, 4 fewer per 100, 2 fewer per 100, 4 more per 100, 5 more per 100, 6 more per 100, 8 more per 100, 9 more per 100, 10 more per 100.",
      "subtitle": "Large mark: the labels as they were. Small dots: the same trays with their labels dealt anew at random. Had the treatment done nothing and the labels been dealt by lot, the real difference would be one more such deal, and the largest of all 20, up or down, about one time in 20. This shows luck; the finding rests on the range.",
      "title": "Vermiculite-covered against Compost-covered: 8 of 19 random relabellings differ as much as the real labels, or more",
    }
  `);
  expect(table.rows).toHaveLength(20);
  expect(spec.datasets?.['dots']).toHaveLength(19);
  expect(spec.datasets?.['real']).toHaveLength(1);
});

test('every replicated demonstration report that has the arrangements shows luck; singles have the table', () => {
  const shown = demoTrials.flatMap((trial) => {
    const result = analyse(trial).results.find(({ primary }) => primary);
    return (result?.comparisons ?? []).map((comparison) =>
      [
        trial.id,
        luckStrip(trial, result as never, comparison, words) ? 'strip' : '',
        luckTable(words, trial, result as never, comparison) ? 'table' : '',
        settlePlot(trial, result as never, comparison, words) ? 'settle' : '',
      ]
        .filter(Boolean)
        .join(' '),
    );
  });
  expect(`\n${shown.join('\n')}\n`).toMatchInlineSnapshot(`
    "
    carrots-under-vermiculite strip settle
    herbs-lit-or-covered table settle
    herbs-lit-or-covered table settle
    herbs-lit-or-covered table settle
    leek-shed-or-fridge strip
    leek-shed-or-fridge strip settle
    leek-shed-or-fridge strip
    lettuce-surface-or-covered strip
    onion-dried-before-freezing settle
    parsley-soaked-a-day strip
    peas-soaked-allotment strip settle
    peas-soaked-balcony table settle
    peas-soaked-gutter table settle
    peas-soaked-porch table settle
    peas-soaked-school settle
    peas-soaked-trough table settle
    tomato-tin-or-envelope strip
    tomato-tin-or-envelope strip
    tomato-tin-or-envelope
    "
  `);
});

test('what would settle it: at the spread seen, or at one that is assumed and said', () => {
  const seen = drawn(settlePlot, 'carrots-under-vermiculite');
  expect({
    title: seen.title,
    subtitle: seen.subtitle,
    rows: seen.table.rows,
    description: seen.description,
  }).toMatchInlineSnapshot(`
    {
      "description": "Smallest difference shown, by number of each. 2 trays of each: 42 per 100 or more. 4 trays of each: 25 per 100 or more. 8 trays of each: 17 per 100 or more. 16 trays of each: 12 per 100 or more. 21 trays of each: 10 per 100 or more.",
      "rows": [
        [
          "2 trays of each",
          "42 per 100 or more",
        ],
        [
          "4 trays of each",
          "25 per 100 or more",
        ],
        [
          "8 trays of each",
          "17 per 100 or more",
        ],
        [
          "16 trays of each",
          "12 per 100 or more",
        ],
        [
          "21 trays of each",
          "10 per 100 or more",
        ],
      ],
      "subtitle": "Mark: the smallest difference that so many of each would show 4 times in 5, at the spread seen in this trial. Line: 10 per 100.",
      "title": "About 21 trays of each would settle a difference of 10 per 100",
    }
  `);
  const assumed = drawn(settlePlot, 'peas-soaked-balcony');
  expect({ title: assumed.title, subtitle: assumed.subtitle, rows: assumed.table.rows }).toMatchInlineSnapshot(`
    {
      "rows": [
        [
          "2 pots of each",
          "55 per 100 or more",
        ],
        [
          "4 pots of each",
          "34 per 100 or more",
        ],
        [
          "8 pots of each",
          "22 per 100 or more",
        ],
        [
          "16 pots of each",
          "15 per 100 or more",
        ],
        [
          "32 pots of each",
          "10 per 100 or more",
        ],
      ],
      "subtitle": "Mark: the smallest difference that so many of each would show 4 times in 5. Assumed, as this trial tells nothing about it: they vary twice as much as the luck of single seeds (φ = 2). Line: 10 per 100.",
      "title": "About 32 pots of each would settle a difference of 10 per 100",
    }
  `);
});

test('nothing would settle what was found', () => {
  const { trial, result, comparison } = primaryOf('parsley-soaked-a-day');
  expect(settlePlot(trial, result, comparison, words)).toBeNull();
});

test('the table of single trays states its assumption', () => {
  const { trial, result, comparison } = primaryOf('peas-soaked-balcony');
  expect(luckTable(words, trial, result, comparison)).toMatchInlineSnapshot(`
    {
      "caption": "Luck alone: by how much two pots that were treated alike commonly differ (20 and 20 seeds)",
      "head": [
        "Where so many come up",
        "half of such pairs differ by",
        "19 of 20 such pairs differ by",
      ],
      "note": "Assumed: pots vary twice as much as the luck of single seeds would make them (φ = 2, variance; no source, common practice for planning). Worked out with the normal curve, so these are rough.",
      "rows": [
        [
          "50 of 100",
          "up to 16 per 100",
          "up to 44 per 100",
        ],
        [
          "70 of 100",
          "up to 14 per 100",
          "up to 41 per 100",
        ],
        [
          "80 of 100",
          "up to 13 per 100",
          "up to 36 per 100",
        ],
        [
          "90 of 100",
          "up to 10 per 100",
          "up to 27 per 100",
        ],
      ],
    }
  `);
});

test('in a series the row of as many units is not said to be the trial, which shows smaller differences with all its tests', () => {
  const { trial, result } = primaryOf('leek-shed-or-fridge');
  const open = result.comparisons.find(({ verdict }) => verdict === 'unclear') as Comparison;
  const { title, table, spec } = settlePlot(trial, result, open, words) as Chart;
  expect(title).toBe(
    'Fridge against Shed, stored 2 years: about 11 batches of each would settle a difference of 10 per 100',
  );
  expect(open.detectable).toBeLessThan(18);
  expect(table.rows).toContainEqual(['4 batches of each', '19 per 100 or more']);
  const said = (of: typeof spec) => JSON.stringify(of.datasets);
  expect(said(spec)).toContain('as many as here');
  expect(said(spec)).not.toContain('this trial');
  expect(said(drawn(settlePlot, 'carrots-under-vermiculite').spec)).toContain('this trial');
});

test.each([
  ['luckStrip', luckStrip],
  ['settlePlot', settlePlot],
] as const)('%s is drawn inside its frame, the same at every build', async (_, of) => {
  const svg = await renderSvg(drawn(of, 'carrots-under-vermiculite').spec, 'x');
  expect(svg).toBe(await renderSvg(drawn(of, 'carrots-under-vermiculite').spec, 'x'));
  expect(svg).not.toMatch(/NaN|undefined|null/);
});

test('of means it is said and drawn in their own unit', () => {
  const trial = demoTrial('parsley-soaked-a-day');
  const result = analyse(trial).results.find(({ outcome }) => outcome === 'height');
  const shown = result?.comparisons[0];
  if (!result || !shown || typeof shown.test?.df !== 'number') throw new Error('no heights');
  const { treatment, control } = shown.units;
  const sd = (shown.detectable ?? 0) / detectableMean({ sd: 1, control, treated: treatment, df: shown.test.df });
  const wouldSettle = { units: unitsForMean(3, sd) ?? 0, difference: 3 };
  const { title, subtitle, table } = settlePlot(
    trial,
    result,
    { ...shown, verdict: 'unclear', wouldSettle },
    words,
  ) as Chart;
  expect({ title, subtitle, table }).toMatchInlineSnapshot(`
    {
      "subtitle": "Mark: the smallest difference that so many of each would show 4 times in 5, at the spread seen in this trial. Line: 3 mm.",
      "table": {
        "head": [
          "Units",
          "Smallest difference shown (mm)",
        ],
        "rows": [
          [
            "2 trays of each",
            "17 mm or more",
          ],
          [
            "4 trays of each",
            "7.2 mm or more",
          ],
          [
            "8 trays of each",
            "4.6 mm or more",
          ],
          [
            "16 trays of each",
            "3.1 mm or more",
          ],
          [
            "17 trays of each",
            "3 mm or more",
          ],
        ],
      },
      "title": "About 17 trays of each would settle a difference of 3 mm",
    }
  `);
});

/** Two lots of eight trays each; in the second the labels make no difference that luck would not. */
function twoLots() {
  const trial = germinationTrial(
    { packet: [30, 31, 29, 32].map((count) => [count, 50]), jar: [40, 41, 42, 39].map((count) => [count, 50]) },
    { outcomes: [makeOutcome({ matters: 10 })] },
  );
  const more = { packet: [30, 40, 35, 33], jar: [38, 31, 41, 33] };
  const onion = trial.sowings.map((sowing) => ({ ...sowing, id: `o-${sowing.id}`, lot: 'onion' }));
  const at: Record<string, number> = { packet: 0, jar: 0 };
  const counts = onion.flatMap(({ id, treatment }) => {
    const own = treatment === 'jar' ? 'jar' : 'packet';
    const place = at[own] ?? 0;
    at[own] = place + 1;
    const like = trial.counts.find(({ sowing }) => `o-${sowing}` === id);
    return like ? [{ ...like, sowing: id, germinated: more[own][place] ?? null }] : [];
  });
  const both = {
    ...trial,
    lots: [...trial.lots, makeLot('onion', 'onion')],
    sowings: [...trial.sowings, ...onion],
    counts: [...trial.counts, ...counts],
  };
  const result = analyse(both).results[0] as Result;
  return { trial: both, result, comparisons: result.comparisons.filter(({ lot }) => lot !== 'all') };
}

test('several lots stand on one axis, each with its own deals', async () => {
  const { trial, result, comparisons } = twoLots();
  const chart = luckStrip(trial, result, comparisons, words) as Chart;
  const alone = comparisons.map((comparison) => luckStrip(trial, result, comparison, words) as Chart);
  expect(chart.title).toMatch(
    /^Of 19 random relabellings, so many differ as much as the real labels, or more: Leek \d+, Onion \d+$/,
  );
  const ats = (one: Chart) => ((one.spec.datasets?.['dots'] ?? []) as { at: number }[]).map(({ at }) => at);
  expect(ats(chart)).toEqual(alone.flatMap(ats));
  expect(chart.spec.datasets?.['real']).toHaveLength(2);
  expect(chart.table.head).toEqual(['Labels', ...comparisons.map((one) => words.comparisonName(trial, one))]);
  expect(chart.table.rows).toHaveLength(2 + 19);
  expect(chart.table.rows[0]?.slice(1)).toEqual(comparisons.map(({ estimate }) => words.difference(estimate, result)));
  for (const [index] of comparisons.entries()) {
    const values = chart.table.rows.slice(2).map((row) => Number(row[index + 1]?.replace('−', '-')));
    expect(values).toEqual(values.toSorted((a, b) => a - b));
  }
  expect(chart.description).toContain('Leek: as it was ');
  expect(await renderSvg(chart.spec, 'x')).not.toMatch(/NaN|undefined|null/);
});

test('what would settle several lots is a table, a row a lot', () => {
  const trial = demoTrial('herbs-lit-or-covered');
  const result = analyse(trial).results.find(({ primary }) => primary) as Result;
  const [table, ...others] = settleTables(words, trial, result, result.comparisons);
  expect(others).toEqual([]);
  expect(table).toMatchInlineSnapshot(`
    {
      "caption": "The smallest difference that so many of each would show 4 times in 5. Assumed, as this trial tells nothing about it: they vary twice as much as the luck of single seeds (φ = 2)",
      "head": [
        "Lot",
        "2 trays",
        "4 trays",
        "8 trays",
        "16 trays",
        "10 per 100 settled by about",
      ],
      "rows": [
        [
          "Dill ‘Feathertop’",
          "47 per 100",
          "27 per 100",
          "17 per 100",
          "12 per 100",
          "20 trays",
        ],
        [
          "Chives ‘Pinfold’",
          "47 per 100",
          "27 per 100",
          "17 per 100",
          "12 per 100",
          "20 trays",
        ],
        [
          "Sage ‘Grey Hob’",
          "48 per 100",
          "29 per 100",
          "19 per 100",
          "13 per 100",
          "24 trays",
        ],
      ],
    }
  `);
});

test('each number of the table is that of the chart of its lot', () => {
  const { trial, result, comparisons } = twoLots();
  const open = comparisons.map((comparison) => ({
    ...comparison,
    verdict: 'unclear' as const,
    wouldSettle: comparison.wouldSettle ?? comparison.repeatWith,
  }));
  const tables = settleTables(words, trial, result, open);
  expect(tables.flatMap(({ rows }) => rows).length).toBeGreaterThan(0);
  for (const table of tables) {
    for (const [lot, ...cells] of table.rows) {
      const comparison = open.find((one) => words.lotName(trial, one.lot) === lot) as Comparison;
      const { rows } = (settlePlot(trial, result, comparison, words) as Chart).table;
      for (const [place, head] of table.head.slice(1, -1).entries()) {
        expect(rows).toContainEqual([`${head} of each`, `${cells[place]} or more`]);
      }
      expect(rows.at(-1)?.[0]).toBe(`${cells.at(-1)} of each`);
    }
  }
});
