import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Analysis, Interval } from '../../src/analysis/analysis.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import { checkTexts } from '../../src/files/prose/check-texts.ts';
import { readContent } from '../../src/files/read-content.ts';
import type { Problem } from '../../src/trial/problem.ts';
import { readTrial } from '../../src/trial/read-trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { everythingSaid } from '../support/everything-said.ts';
import { mutatedFiles, type Files } from './mutated-files.ts';

const content = join(import.meta.dirname, '..', '..', 'content');
const { site } = await readContent(content);
const READ = /\.(csv|yaml|mdx?)$/;
const trials = readdirSync(join(content, 'trials')).map(
  (id): Files =>
    new Map(
      readdirSync(join(content, 'trials', id))
        .filter((name) => READ.test(name))
        .map((name) => [name, readFileSync(join(content, 'trials', id, name))]),
    ),
);
const languages = [wordsFor('en'), wordsFor('de')];
const RUNS = Number(process.env.FUZZ_RUNS ?? 500);
const SEED = Number(process.env.FUZZ_SEED ?? 20261125);
/** Microseconds of the processor in which one trial must be read, analysed and told. */
const LONGEST = 5_000_000;

let read = 0;
let refused = 0;

test(
  `${RUNS} changed trials: each is refused with a place, or analysed with whole numbers and sentences`,
  () => {
    fc.assert(
      fc.property(mutatedFiles(trials), (files) => {
        const start = process.threadCpuUsage();
        const { trial, problems } = readTrial({ id: 'changed', folder: 'content/trials/changed', files, site });
        const words = checkTexts(files, 'content/trials/changed', trial, site.language, analyse);
        for (const problem of [...problems, ...words]) expectPlaced(problem, files);
        if (trial) {
          read += 1;
          const analysis = publishedAnalysis(trial, site.language);
          expectWhole(analysis, 'analysis');
          expectIntervals(analysis);
          for (const language of languages) expectSaid(everythingSaid(language, trial), files);
        } else {
          refused += 1;
          expect([...problems, ...words].some(({ level }) => level === 'error')).toBe(true);
        }
        expect(process.threadCpuUsage(start).user).toBeLessThan(LONGEST);
      }),
      { seed: SEED, numRuns: RUNS },
    );
    expect(read).toBeGreaterThan(RUNS / 20);
    expect(refused).toBeGreaterThan(RUNS / 20);
    if (process.env.FUZZ_RUNS) process.stdout.write(`${read} analysed, ${refused} refused\n`);
  },
  60_000 + 100 * RUNS,
);

/** The file is there or is missed by name; the line is one of its lines; nothing reads like a crash. */
function expectPlaced({ file, line, column, message, remedy }: Problem, files: Files): void {
  const name = file.replace('content/trials/changed', '').replace(/^\//, '');
  const bytes = files.get(name);
  if (line !== null) {
    expect(bytes, `${file}:${line} ${message}`).toBeDefined();
    const lines = linesOf(bytes as Uint8Array);
    expect(line, `${file} ${message}`).toBeGreaterThanOrEqual(1);
    expect(line, `${file} ${message}`).toBeLessThanOrEqual(lines);
  }
  if (column !== null) expect(column, file).toBeGreaterThanOrEqual(1);
  for (const text of [message, remedy]) {
    expect(text).not.toMatch(/\bat \S+ \(|TypeError|RangeError|\bundefined\b|\[object|(?<!")NaN/);
    expect(text.length).toBeGreaterThan(0);
  }
}

function linesOf(bytes: Uint8Array): number {
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const text = new TextDecoder(isWide ? (bytes[0] === 0xff ? 'utf-16le' : 'utf-16be') : 'latin1').decode(bytes);
  return text.split(/\r\n|\r|\n/).length;
}

/** No NaN, nothing endless: JSON would turn both into null and hide them. */
function expectWhole(value: unknown, path: string): void {
  if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
  else if (Array.isArray(value)) value.forEach((each, index) => expectWhole(each, `${path}[${index}]`));
  else if (value !== null && typeof value === 'object') {
    for (const [key, each] of Object.entries(value)) expectWhole(each, `${path}.${key}`);
  }
}

function expectIntervals({ results }: Analysis): void {
  for (const { outcome, groups, comparisons } of results) {
    for (const { estimate, interval } of [...groups, ...comparisons]) expectAround(estimate, interval, outcome);
    for (const { estimate, equivalence } of comparisons) {
      if (equivalence) expectAround(estimate, equivalence.interval as Interval, `${outcome} at 90 %`);
    }
  }
}

function expectAround(estimate: number | null, interval: Interval | null, what: string): void {
  const { lower = null, upper = null } = interval ?? {};
  if (lower === null || upper === null) return;
  expect(upper, what).toBeGreaterThanOrEqual(lower);
  if (estimate === null) return;
  const slack = 1e-9 * Math.max(1, Math.abs(estimate));
  expect(estimate, what).toBeGreaterThanOrEqual(lower - slack);
  expect(estimate, what).toBeLessThanOrEqual(upper + slack);
}

/** No word that only a machine says, unless somebody wrote it into the files: what they say is told as it stands. */
function expectSaid(texts: readonly string[], files: Files): void {
  const written = [...files.values()]
    .map((bytes) => new TextDecoder('latin1').decode(bytes).replaceAll('\0', ''))
    .join();
  const machine = ['NaN', 'undefined', 'Infinity', '[object'].filter((word) => !written.includes(word));
  for (const text of texts) {
    expect(machine.filter((word) => text.includes(word)), text).toEqual([]); // prettier-ignore
    expect(text.replaceAll('${x}', '').replaceAll('{{x}}', '')).not.toMatch(/\{\w+\}/);
  }
}
