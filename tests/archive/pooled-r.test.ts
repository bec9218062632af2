import fc from 'fast-check';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Pooled } from '../../src/analysis/pooled.ts';
import { pooledQuestions } from '../../src/files/pooled-questions.ts';
import { questionFiles } from '../../src/files/question-files.ts';
import { readContent } from '../../src/files/read-content.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { FOUR, pool, questionOf, trialOf } from '../support/pooled-trials.ts';
import { runRScript } from '../support/run-r-script.ts';

const filesOf = async (pooled: Pooled): Promise<Record<string, string>> => {
  const files = await questionFiles(questionOf([]), pooled, DEFAULT_SITE);
  return Object.fromEntries(files.filter(({ name }) => !name.endsWith('.zip')).map(({ name, bytes }) => [name, new TextDecoder().decode(bytes)])); // prettier-ignore
};
const run = (files: Readonly<Record<string, string>>) => runRScript('analysis.R', files);
const agreed = (printed: string): number => Number(/all (\d+) figures agree/.exec(printed)?.[1] ?? NaN);

const { site, trials, repeats } = await readContent(join(import.meta.dirname, '..', '..', 'content'));
const analysed = trials.flatMap(({ trial }) => (trial ? [{ trial, analysis: publishedAnalysis(trial, 'en') }] : []));
const [demo] = pooledQuestions(site, analysed, repeats);

test('the demonstration question: R finds every figure again', async () => {
  const { printed, error } = await run(await filesOf(demo?.pooled as Pooled));
  expect(error).toBeNull();
  // 4 a trial with its weight and 3 without it, and 14 together.
  expect(agreed(printed)).toBe(6 * (4 + 1 + 3) + 14);
});

test('R stops where a count is one higher, and where any published figure differs by more than 1e-6', async () => {
  const files = await filesOf(demo?.pooled as Pooled);
  const table = files['trials.csv'] ?? '';
  const tampered = table.replace(/,22,25,18,25,/, ',23,25,18,25,');
  expect(tampered).not.toBe(table);
  const counted = await run({ ...files, 'trials.csv': tampered });
  expect(counted.error).toMatch(/^\d+ figures of soaked-peas differ from analysis.json:\ntrial \d \(peas-soaked-gutter\), estimate/); // prettier-ignore

  const analysis = JSON.parse(files['analysis.json'] ?? '') as Pooled;
  const off = (value: number | null | undefined) => (value ?? 0) + 3e-6 * Math.max(1, Math.abs(value ?? 0));
  const touched: readonly [string, Partial<Pooled>][] = [
    ['estimate', { estimate: off(analysis.estimate) }],
    ['lower', { interval: analysis.interval && { ...analysis.interval, lower: off(analysis.interval.lower) } }],
    ['nextUpper', { nextResult: { ...analysis.nextResult, upper: off(analysis.nextResult?.upper) } as Pooled['nextResult'] }], // prettier-ignore
    ['p', { test: analysis.test && { ...analysis.test, p: off(analysis.test.p) } }],
    ['tau2', { tau2: off(analysis.tau2) }],
    [
      'weight',
      { trials: analysis.trials.map((trial, i) => (i === 2 ? { ...trial, weight: off(trial.weight) } : trial)) },
    ],
    ['without trial 1', { leaveOneOut: analysis.leaveOneOut.map((each, i) => (i === 0 ? { ...each, upper: off(each.upper) } : each)) }], // prettier-ignore
  ];
  for (const [name, parts] of touched) {
    const { error } = await run({ ...files, 'analysis.json': JSON.stringify({ ...analysis, ...parts }) });
    expect(error, name).toContain(name);
    expect(error, name).toMatch(/^1 figures of soaked-peas differ/);
  }
});

test('with fewer than three trials nothing is pooled, and R says so', async () => {
  const { printed, error } = await run(await filesOf(pool(FOUR.slice(0, 2))));
  expect(error).toBeNull();
  expect(printed).toContain('Fewer than three trials: nothing is pooled.');
  expect(agreed(printed)).toBe(8);
  expect((await run(await filesOf(pool([])))).error).toBeNull();
});

const up = fc.integer({ min: 0, max: 40 });
const drawn = fc.array(fc.array(fc.tuple(up, up), { minLength: 1, maxLength: 4 }), { minLength: 3, maxLength: 8 });

test.each(fc.sample(drawn, { numRuns: 20, seed: 20261125 }).map((all, index) => ({ all, index })))(
  'drawn question $index: R agrees',
  async ({ all }) => {
    const pooled = pool(
      all.map((units, index) =>
        trialOf(`t${index}`, {
          packet: units.map(([packet]) => [packet, 40] as const),
          jar: units.map(([, jar]) => [jar, 40] as const),
        }),
      ),
    );
    const { printed, error } = await run(await filesOf(pooled));
    expect(error).toBeNull();
    expect(agreed(printed)).toBeGreaterThan(20);
  },
);

test('names in any script, quotation marks and formulas do not disturb it', async () => {
  const odd = FOUR.map((trial, index) => ({
    ...trial,
    title: ['=SUM(A1)', 'a "quoted", one', "it's; one", 'Erbsen — 豌豆 \\ \n end'][index] ?? '',
  }));
  const files = await filesOf(pool(odd));
  expect((await run(files)).error).toBeNull();
  expect(files['trials.csv']).toContain("'=SUM(A1)");
});
