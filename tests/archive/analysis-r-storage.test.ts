import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { tablesOf } from '../../src/archive/tables-of.ts';
import { analysisJson } from '../../src/files/analysis-json.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { makeTreatment } from '../support/make-trial.ts';
import { runRScript } from '../support/run-r-script.ts';
import { alike, storageTrial } from '../support/storage-trial.ts';

const script = readFileSync('src/archive/analysis.R', 'utf8');
const agreed = (printed: string): number => Number(/all (\d+) figures agree/.exec(printed)?.[1] ?? NaN);

const start = { 0: [[46, 50], [48, 50], [47, 50]] } as const; // prettier-ignore
const SERIES: readonly (readonly [string, Trial])[] = [
  ['lines and half-lives', storageTrial({ start, packet: alike({ 1: 43, 2: 30, 4: 12 }, 3), jar: alike({ 1: 46, 2: 44, 4: 40 }, 3) })],
  ['a jar a test', storageTrial({ start, packet: alike({ 1: 43, 2: 30, 4: 12 }, 1), jar: alike({ 1: 46, 2: 47, 4: 48 }, 1) })],
  ['no line', storageTrial({ start, packet: alike({ 1: 43 }), jar: alike({ 1: 50 }) })],
  ['no start, three kinds', storageTrial({ packet: alike({ 1: 40, 2: 33, 3: 20 }), jar: alike({ 1: 45, 2: 40, 3: 38 }), tin: alike({ 1: 46, 2: 41, 3: 31 }) }, { treatments: ['packet', 'jar', 'tin'].map((id, index) => makeTreatment(id, { control: index === 0 })) })],
  ['scattered', storageTrial({ jar: { 0: [[30, 50]], 1: [[18, 50]], 2: [[29, 50]], 3: [[24, 50]] } }, { treatments: [makeTreatment('jar', { control: true })] })],
]; // prettier-ignore

test.each(SERIES)('R agrees on a storage series: %s', async (_, trial) => {
  const analysis = publishedAnalysis(trial, 'en');
  const tables = tablesOf(trial).map(({ name, text }) => [name, text] as const);
  const files = { 'analysis.R': script, 'analysis.json': analysisJson(analysis), ...Object.fromEntries(tables) };
  const { printed, error } = await runRScript('analysis.R', files);
  expect(error).toBeNull();
  expect(agreed(printed)).toBeGreaterThan(20);

  const ki = analysis.results[0]?.storage?.find((line) => line.ki !== null)?.ki;
  if (ki == null) return;
  const changed = analysisJson(analysis).replace(`"ki": ${ki},`, `"ki": ${ki + 3e-6 * Math.max(1, ki)},`);
  const other = await runRScript('analysis.R', { ...files, 'analysis.json': changed });
  expect(other.error).toMatch(/survival line, ki: published/);
});
