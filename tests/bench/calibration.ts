/**
 * Do intervals, tests and verdicts hold what they promise? Trials are drawn at random and put through the project's own
 * comparisons: cover, false alarms, false "same", widths, each with its Monte Carlo error. Prints Markdown tables.
 *
 * `node tests/bench/calibration.ts [trials a cell, 4000] [sweep]`: the table of methods 2, then false "same" at the margin,
 * blocks, means and times; `sweep` adds 375 cells of k, seeds, germination and φ, which takes some minutes.
 * Exit code 1 where a cell lies beyond a limit by more than 3 Monte Carlo errors.
 */
import { cpus } from 'node:os';
import { planDesign, type PlanDesign } from '../../src/analysis/planning/plan-design.ts';
import { simulatePlan } from '../../src/analysis/planning/simulate-plan.ts';
import { simulated, type Chances, type Rate } from '../../src/analysis/planning/simulated.ts';
import { halfLives } from './calibration-half-life.ts';
import { pooledQuestions } from './calibration-pooled.ts';
import { unequalSpreads } from './calibration-unequal.ts';
import { besideIndependentSeeds, METHODS_TABLE } from './calibration-table.ts';

const [least, mostAlarms, mostSame] = [0.925, 0.08, 0.08];
const trials = Number(process.argv[2] ?? 4000);
const isSweep = process.argv.includes('sweep');
if (!Number.isInteger(trials) || trials < 10)
  throw new RangeError(`trials a cell must be a whole number, got ${trials}`);

const percent = ({ share, error }: Rate) => `${(100 * share).toFixed(1)} ± ${(100 * error).toFixed(1)} %`;
const row = (cells: readonly (string | number)[]) => console.log(`| ${cells.join(' | ')} |`);
function head(title: string, cells: readonly string[]): void {
  console.log(`\n${title}\n`);
  row(cells);
  row(cells.map(() => '---'));
}

const beyond: string[] = [];
const under = ({ share, error }: Rate, limit: number) => share + 3 * error < limit;
const over = ({ share, error }: Rate, limit: number) => share - 3 * error > limit;
function hold(name: string, { covered, coveredNone, smallP, falselyAlike }: Chances): void {
  if (under(covered, least) || under(coveredNone, least)) beyond.push(`${name}: cover`);
  if (over(smallP, mostAlarms)) beyond.push(`${name}: false alarms`);
  if (over(falselyAlike, mostSame)) beyond.push(`${name}: false same`);
}

function chances(design: PlanDesign): Chances {
  const { crop } = simulated(simulatePlan(design, { seed: 'calibration', from: 0, count: trials }));
  if (crop === null) throw new Error(`nothing could be compared in ${JSON.stringify(design)}`);
  return crop;
}

function tell(
  title: string,
  columns: readonly string[],
  designs: readonly (readonly [cells: readonly (string | number)[], PlanDesign])[],
) {
  head(title, [
    ...columns,
    'covers',
    'covers, difference there',
    'false alarms (p)',
    'false alarms (range)',
    'false “same”',
    'half width',
  ]);
  for (const [cells, design] of designs) {
    const found = chances(design);
    hold(`${title} ${cells.join(' ')}`, found);
    const { coveredNone, covered, smallP, falseAlarm, falselyAlike, halfWidth } = found;
    row([
      ...cells,
      ...[coveredNone, covered, smallP, falseAlarm, falselyAlike].map(percent),
      halfWidth.value.toPrecision(3),
    ]);
  }
}

const cross = <A, B>(one: readonly A[], other: readonly B[]) => one.flatMap((a) => other.map((b) => [a, b] as const));
const germination = (parts: Partial<PlanDesign>) =>
  planDesign({ measure: 'germination', base: 80, matters: 10, units: 4, ...parts });

console.log(
  `${cpus()[0]?.model.trim()}, Node ${process.versions.node}, ${trials} trials a cell, ± one Monte Carlo error`,
);

head('Methods 2, trays of 50 seeds, no true difference', [
  'k', 'φ', 'germination', 'covers', 'seeds as independent: covers', 'false alarms', 'seeds as independent: false alarms',
]); // prettier-ignore
for (const [units, spread, base] of METHODS_TABLE) {
  const found = besideIndependentSeeds(germination({ units, spread, base, matters: 2 }), trials);
  row([
    units,
    spread,
    `${base} %`,
    ...[found.covers, found.independentCovers, found.alarms, found.independentAlarms].map(percent),
  ]);
}

tell(
  'Germination, true difference equal to the margin of 10',
  ['k', 'φ', 'control'],
  cross(cross([3, 4, 8], [1, 2, 4]), [60, 85]).map(([[units, spread], base]) => [
    [units, spread, `${base} %`],
    germination({ units, spread, base }),
  ]),
);
tell(
  'Germination in blocks',
  ['blocks', 'φ', 'control'],
  cross(cross([3, 4, 8], [1, 2, 4]), [60, 90]).map(([[units, spread], base]) => [
    [units, spread, `${base} %`],
    germination({ units, spread, base, inBlocks: true }),
  ]),
);
tell(
  'Means of trays (Welch; paired t in blocks), margin 1.5 standard deviations',
  ['k', 'blocks'],
  cross([2, 3, 4, 8], [false, true]).map(([units, inBlocks]) => [
    [units, inBlocks ? 'yes' : 'no'],
    planDesign({ measure: 'trait', base: 20, matters: 3, spread: 2, units, inBlocks }),
  ]),
);
tell(
  'Time to half around day 6, 50 seeds a tray, margin 1 day',
  ['k', 'days between checks'],
  cross([3, 4, 8], [1, 2, 3]).map(([units, every]) => [
    [units, every],
    planDesign({ measure: 't50', base: 6, matters: 1, units, timing: { every, seedSpread: 1.2, germination: 80 } }),
  ]),
);

head('Means, trays of one treatment three times as spread, no true difference (Welch)', [
  'k treated',
  'k control',
  'covers',
  'false alarms (p)',
]);
for (const [treated, control] of [
  [3, 3],
  [4, 4],
  [8, 8],
  [3, 8],
  [8, 3],
] as const) {
  const { covers, alarms } = unequalSpreads(treated, control, trials);
  if (under(covers, least)) beyond.push(`unequal spread ${treated} ${control}: cover`);
  if (over(alarms, mostAlarms)) beyond.push(`unequal spread ${treated} ${control}: false alarms`);
  row([treated, control, percent(covers), percent(alarms)]);
}

head('Questions of several trials, 4 trays of 50 seeds each, φ 2, true differences 8 points ± sd', [
  'trials',
  'sd',
  'mean covered',
  'truth of a next trial covered',
  'next result covered',
]);
for (const [number, tau] of cross([3, 6], [0, 3, 6])) {
  const { mean, prediction, next } = pooledQuestions(number, tau, trials);
  if (under(next, 0.9)) beyond.push(`question of ${number}, sd ${tau}: next result`);
  row([number, tau, ...[mean, prediction, next].map(percent)]);
}

head('Half-life of storage series over 6 years, tested 5 times, true half-life 3.3 years', [
  'jars a time',
  'φ',
  'half-life given',
  'covered where given',
]);
for (const [jars, spread] of cross([1, 2, 4], [1, 2, 4])) {
  const { given, covered } = halfLives(jars, spread, trials);
  if (under(covered, least)) beyond.push(`half-life, ${jars} jars, φ ${spread}: cover`);
  row([jars, spread, percent(given), percent(covered)]);
}

if (isSweep) {
  const cells = cross(cross([2, 3, 4, 6, 8], [10, 50, 100]), cross([50, 70, 90, 97, 99], [1, 1.5, 2, 4, 8]));
  const found = cells.map(([[units, seeds], [base, spread]]) => {
    const design = germination({ units, seeds, base, spread, matters: base > 98 ? 1 : 2 });
    return { design, ...besideIndependentSeeds(design, trials) };
  });
  head(`${found.length} cells: k 2 to 8, 10 to 100 seeds, 50 to 99 %`, [
    'φ',
    'least cover',
    'at',
    'most false alarms',
    'at',
  ]);
  for (const [name, some] of [
    ['1 to 4', found.filter(({ design }) => design.spread <= 4)],
    ['8', found.filter(({ design }) => design.spread > 4)],
  ] as const) {
    const [low] = some.toSorted((a, b) => a.covers.share - b.covers.share);
    const [high] = some.toSorted((a, b) => b.alarms.share - a.alarms.share);
    if (!low || !high) continue;
    const at = ({ units, seeds, base, spread }: PlanDesign) => `k ${units}, ${seeds} seeds, ${base} %, φ ${spread}`;
    row([name, percent(low.covers), at(low.design), percent(high.alarms), at(high.design)]);
    if (under(low.covers, least)) beyond.push(`sweep φ ${name}: cover`);
    if (over(high.alarms, mostAlarms)) beyond.push(`sweep φ ${name}: false alarms`);
  }
}

console.log(beyond.length === 0 ? '\nEvery cell holds.' : `\nBeyond the limits:\n${beyond.join('\n')}`);
process.exit(beyond.length === 0 ? 0 : 1);
