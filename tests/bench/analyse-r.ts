/**
 * `analyse` against R doing the same numbers: invented trials of 4 lots × 2 treatments × 4 sowings × 8 count days with
 * heights, `node tests/bench/analyse-r.ts [trials] [times]`. R's side are the formulas of tests/reference/r/analysis.R (written
 * apart, base R) as tests/bench/analyse-r.R calls them, in one process of R; start-up and the reading of data do not count, on either
 * side. Processor time, everything warm. First it is made sure that both find the same differences and limits.
 *
 * R is Rscript where the machine has one, and in any case webR, the WebAssembly build that the tests use; that is slower than R made
 * for the machine, so only a ratio to Rscript is one to R as people know it. R is not asked for caveats and verdicts, which
 * ours works out within the same time.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { analyse } from '../../src/analysis/analyse.ts';
import { readContent } from '../../src/files/read-content.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { vector } from '../support/r-figures.ts';
import { r, startR } from '../support/r.ts';
import { generateSite } from './generate-site.ts';

const WANTED = 10;
const [number = 20, times = 5] = process.argv.slice(2).map(Number);
const folder = mkdtempSync(join(tmpdir(), 'fairsown-bench-'));

try {
  generateSite(folder, number);
  const trials = (await readContent(folder)).trials.flatMap(({ trial }) => trial ?? []);
  const ours = measured(() => trials.forEach((trial) => analyse(trial)));
  console.log(`ours    ${ours.toFixed(2).padStart(7)} ms a trial, Node ${process.versions.node}`);

  const code = [
    ...['../reference/r/analysis.R', 'analyse-r.R'].map((file) =>
      readFileSync(join(import.meta.dirname, file), 'utf8'),
    ),
    `trials <- list(${trials.map(inR).join(',\n')})`,
  ].join('\n');
  const expected = trials.flatMap(compared);
  const found = [native(code), await webR(code)].flatMap((done) => done ?? []);
  for (const { name, version, figures } of found) {
    const [seconds = NaN, ...differences] = figures;
    agree(differences, expected, name);
    const ratio = (seconds * 1000) / ours;
    console.log(
      `${name} ${(seconds * 1000).toFixed(2).padStart(7)} ms a trial, ${version}: ${ratio.toFixed(1)} × ours`,
    );
  }
  console.log('webR is R in WebAssembly, slower than R made for the machine.');
  const slowest = Math.min(...found.map(({ figures: [seconds = NaN] }) => (seconds * 1000) / ours));
  process.exitCode = slowest >= WANTED ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.exit();

/** Milliseconds of processor a trial, the median of several rounds after as many for nothing. */
function measured(round: () => void): number {
  for (let warming = 0; warming < times; warming++) round();
  const spent = Array.from({ length: times }, () => {
    const before = process.cpuUsage();
    round();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000 / number;
  });
  return spent.toSorted((a, b) => a - b)[Math.floor(times / 2)] ?? NaN;
}

interface Done {
  readonly name: string;
  readonly version: string;
  /** Seconds a trial, then differences and limits. */
  readonly figures: readonly number[];
}

function native(code: string): Done | null {
  const script = join(folder, 'bench.R');
  writeFileSync(script, `${code}\ncat(R.version.string, sprintf("%.17g", timed(trials, ${times})), sep = "\\n")\n`);
  const { status, stdout, stderr } = spawnSync('Rscript', ['--vanilla', script], { encoding: 'utf8' });
  if (status === null) return null; // there is none
  if (status !== 0) throw new Error(`Rscript failed: ${stderr}`);
  const [version = '', ...figures] = stdout.trim().split('\n');
  return { name: 'Rscript', version, figures: figures.map(Number) };
}

async function webR(code: string): Promise<Done> {
  const R = await startR();
  await R.evalRVoid(code);
  const [, ...figures] = await r('timed(trials, 1)');
  // It runs in a thread of this process and has no clock of its own for processor time.
  const before = process.cpuUsage();
  await R.evalRVoid(`for (i in seq_len(${times})) lapply(trials, analyse_trial)`);
  const { user, system } = process.cpuUsage(before);
  const version = await R.evalRString('R.version.string');
  return { name: 'webR   ', version, figures: [(user + system) / 1e6 / times / number, ...figures] };
}

/** A trial as the lists that analyse_trial takes: units with their checks and heights by lot and treatment. */
function inR({ lots, sowings, counts, measurements }: Trial): string {
  const unit = (id: string, seeds: number | null) => {
    const checks = counts.filter(({ sowing }) => sowing === id);
    const heights = measurements.filter(({ sowing }) => sowing === id).map(({ values }) => values.height ?? NaN);
    const numbers = (values: readonly (number | null)[]) => vector(values.map((value) => value ?? NaN));
    return `list(seeds = ${seeds}, day = ${numbers(checks.map(({ day }) => day))}, total = ${numbers(checks.map(({ germinated }) => germinated))}, height = ${numbers(heights)})`;
  };
  const group = (lot: string, treatment: string) =>
    `list(${sowings
      .filter((sowing) => sowing.lot === lot && sowing.treatment === treatment)
      .map(({ id, seeds }) => unit(id, seeds))
      .join()})`;
  return `list(${lots.map(({ id }) => `list(t = ${group(id, 'jar')}, c = ${group(id, 'packet')})`).join()})`;
}

/** Differences, limits and units that would settle it of an analysis, as `compared` in R gives them. */
function compared(trial: Trial): number[] {
  const { results } = analyse(trial);
  return ['germination', 'speed', 'height'].flatMap((outcome) => {
    const comparisons = results.find((result) => result.outcome === outcome)?.comparisons ?? [];
    const lots = [...trial.lots.map(({ id }) => id), ...(outcome === 'germination' ? ['all'] : [])];
    return lots.flatMap((lot) => {
      const { estimate, interval, wouldSettle } = comparisons.find((comparison) => comparison.lot === lot) ?? {};
      const settle = lot === 'all' ? [] : [wouldSettle?.units ?? NaN];
      return [estimate ?? NaN, interval?.lower ?? NaN, interval?.upper ?? NaN, ...settle];
    });
  });
}

function agree(found: readonly number[], expected: readonly number[], name: string): void {
  if (found.length !== expected.length)
    throw new Error(`${name} gives ${found.length} figures, ours ${expected.length}`);
  for (const [index, wanted] of expected.entries()) {
    if (!(Math.abs((found[index] ?? NaN) - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted))))
      throw new Error(`${name} finds ${found[index]} where ours is ${wanted} (figure ${index})`);
  }
}
