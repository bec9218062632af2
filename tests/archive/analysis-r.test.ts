import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Analysis } from '../../src/analysis/analysis.ts';
import { tablesOf } from '../../src/archive/tables-of.ts';
import { analysisJson } from '../../src/files/analysis-json.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { drawnTrial, type Design } from '../support/drawn-trial.ts';
import { publishedDemo } from '../support/published-demo.ts';
import { runRScript } from '../support/run-r-script.ts';

const trials = await publishedDemo();
const named = trials.map((published) => [published.trial.id, published] as const);
const NEEDED = ['analysis.R', 'analysis.json', 'counts-long.csv', 'measurements-long.csv'];

const filesOf = ({ files, text }: (typeof trials)[number]): Record<string, string> =>
  Object.fromEntries(files.filter(({ name }) => NEEDED.includes(name)).map(({ name }) => [name, text(name)]));
const agreed = (printed: string): number => Number(/all (\d+) figures agree/.exec(printed)?.[1] ?? NaN);

test.each(named)('%s: R finds every figure again from the long tables alone', async (id, published) => {
  const { printed, error } = await runRScript('analysis.R', filesOf(published));
  expect(error).toBeNull();
  // Nothing is compared before the last count.
  if (published.analysis.results.length === 0) expect(printed).toContain(`${id}: all 0 figures agree`);
  else expect(agreed(printed)).toBeGreaterThan(15);
});

/** One more seed germinated in the first sowing that enters the first outcome, at the day that it is read. */
function tampered(table: string, analysis: Analysis): string {
  const [result] = analysis.results;
  const value = result?.values.find(({ lot, count, seeds }) => lot && (count ?? 0) < (seeds ?? 0));
  const [sowing = ''] = value?.sowings ?? [];
  const day = result?.days[value?.lot ?? ''];
  return table
    .split('\n')
    .map((line) => {
      const cells = line.split(',');
      if (cells[0] !== sowing || Number(cells[9]) !== day) return line;
      return cells.with(10, String(Number(cells[10]) + 1)).join(',');
    })
    .join('\n');
}

test.each(named.filter(([, { analysis }]) => analysis.results.length > 0))(
  '%s: R stops where one count is one higher, and where one published figure differs by more than 1e-6',
  async (id, published) => {
    const files = filesOf(published);
    const analysis: Analysis = JSON.parse(published.text('analysis.json'));
    const counts = tampered(files['counts-long.csv'] ?? '', analysis);
    expect(counts).not.toBe(files['counts-long.csv']);
    const { error } = await runRScript('analysis.R', { ...files, 'counts-long.csv': counts });
    expect(error).toMatch(new RegExp(`^\\d+ figures of ${id} differ from analysis.json:\n.*, count: published \\d+, recomputed \\d+`)); // prettier-ignore

    const [first] = analysis.results[0]?.groups ?? [];
    const changed = (files['analysis.json'] ?? '').replaceAll(
      `"estimate": ${first?.estimate},`,
      `"estimate": ${(first?.estimate ?? 0) * (1 + 3e-6)},`,
    );
    const other = await runRScript('analysis.R', { ...files, 'analysis.json': changed });
    expect(other.error).toMatch(/estimate: published .*, recomputed/);
  },
);

/** [design, test methods that it brings about]. */
const DESIGNS: readonly (readonly [Design, readonly string[]])[] = [
  [{ lots: 1, treatments: 3, units: 4 }, ['score-f', 'welch-t']],
  [{ lots: 2, treatments: 2, units: 3, days: [3, 7, 14] }, ['pooled-f', 'pooled-t']],
  [{ lots: 1, treatments: 2, units: 7, blocks: true }, ['score-f-blocks', 'paired-t']],
  [{ lots: 1, treatments: 3, units: 3, blocks: true, days: [2, 9, 14] }, ['score-f-blocks', 'paired-t']],
  [{ lots: 6, treatments: 2, units: 1 }, ['score-f-blocks', 'paired-t']],
  [{ lots: 1, treatments: 2, units: 6, inBatch: 2 }, ['score-f', 'welch-t']],
  [{ lots: 1, treatments: 2, units: 10 }, ['score-f', 'welch-t']],
];
const script = readFileSync('src/archive/analysis.R', 'utf8');

test.each(DESIGNS.flatMap(([design, methods]) => [1, 2].map((seed) => ({ design, methods, seed }))))(
  'R agrees on every measure of a drawn trial of $design, seed $seed',
  async ({ design, methods, seed }) => {
    const trial = drawnTrial(design, seed);
    const analysis = publishedAnalysis(trial, 'en');
    const used = analysis.results.flatMap(({ comparisons }) =>
      comparisons.map((comparison) => comparison.test?.method),
    );
    for (const method of methods) expect(used).toContain(method);
    const tables = tablesOf(trial).map(({ name, text }) => [name, text] as const);
    const files = { 'analysis.R': script, 'analysis.json': analysisJson(analysis), ...Object.fromEntries(tables) };
    const { printed, error } = await runRScript('analysis.R', files);
    expect(error).toBeNull();
    expect(agreed(printed)).toBeGreaterThan(100);
  },
);
