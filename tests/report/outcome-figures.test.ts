import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import { lotsOf } from '../../src/analysis/lots-of.ts';
import { readContent } from '../../src/files/read-content.ts';
import { outcomeFigures } from '../../src/report/outcome-figures.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { generateSite } from '../bench/generate-site.ts';

const folder = mkdtempSync(join(tmpdir(), 'fairsown-figures-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
generateSite(folder, 1);
const [read] = (await readContent(folder)).trials;
const trial = read?.trial;
if (!trial) throw new Error('the invented trial cannot be read');
const analysis = analyse(trial);
const words = wordsFor('en');

test('four lots and three outcomes are five figures, not one a lot', () => {
  const figures = analysis.results.flatMap((result) => outcomeFigures(words, trial, analysis, result));
  expect(figures.map(({ id }) => id)).toEqual([
    'result-germination-all-differences',
    'result-germination-leek-germination',
    'result-germination-leek-units',
    'result-speed-leek-units',
    'result-height-leek-trait',
  ]);
});

test('a chart without a value is left out', () => {
  const speed = analysis.results.find(({ outcome }) => outcome === 'speed')!;
  expect(outcomeFigures(words, trial, analysis, speed)).toHaveLength(1);
  expect(outcomeFigures(words, trial, analysis, { ...speed, values: [] })).toEqual([]);
});

test('every lot stands in the table and in the text alternative of each figure', () => {
  for (const result of analysis.results) {
    const lots = lotsOf(result).filter((lot) => lot !== 'all');
    expect(lots).toHaveLength(4);
    for (const { chart } of outcomeFigures(words, trial, analysis, result)) {
      const told = chart.table.rows.flat().join(' ');
      for (const lot of lots) {
        expect(told, chart.kind).toContain(words.lotName(trial, lot));
        expect(chart.description, chart.kind).toContain(words.lotName(trial, lot));
      }
    }
  }
});

test('every unit and every group of the analysis stands in the numbers of its figure', () => {
  for (const result of analysis.results) {
    const figures = outcomeFigures(words, trial, analysis, result);
    const last = figures.find(({ chart }) => chart.kind === 'units' || chart.kind === 'trait');
    const units = last?.chart.table.rows.map((row) => row[2]) ?? [];
    expect(units.filter((unit) => unit !== words.ui['chart.together'])).toEqual(result.values.map(({ unit }) => unit));
    expect(units.filter((unit) => unit === words.ui['chart.together'])).toHaveLength(result.groups.length);
  }
});
