import type { Analysis, Comparison, Group, Result } from '../analysis/analysis.ts';
import { seedLuckOnly } from '../analysis/seed-luck-only.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { statusNote } from '../wording/status-note.ts';
import { linesTable } from '../wording/tables/lines-table.ts';
import { wrapped } from './wrapped.ts';

const WIDTH = 80;

/**
 * The analysis of one trial for a terminal of 80 columns: groups and differences of every outcome, lot by
 * lot, of a storage series its survival lines, then the caveats, heaviest first. A trial that is planned or growing
 * says so first.
 */
export function analysisText(words: Words, trial: Trial, analysis: Analysis): string {
  const title = wrapped(`${trial.title} (${trial.id})`, WIDTH);
  const note = trial.status === 'planned' || trial.status === 'growing' ? statusNote(words, trial, analysis) : null;
  const blocks = [
    [title, '='.repeat(Math.min(WIDTH, Math.max(...title.split('\n').map((line) => line.length))))].join('\n'),
    ...(note ? [wrapped(note, WIDTH)] : []),
    ...analysis.results.map((result) => outcomeText(words, trial, analysis, result)),
    ...caveatTexts(words, trial, analysis),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function outcomeText(words: Words, trial: Trial, analysis: Analysis, result: Result): string {
  const lots = [...new Set(result.groups.map(({ lot }) => lot))];
  const title = words.outcomeTitle(trial, result);
  const pooled = result.comparisons.filter(({ lot }) => lot === 'all');
  return [
    title,
    '-'.repeat(title.length),
    ...lots.flatMap((lot) => ['', ...lotLines(words, trial, result, lot)]),
    ...storageLines(words, trial, analysis, result),
    ...(pooled.length === 0 ? [] : ['', ...pooled.flatMap((comparison) => comparisonLines(words, trial, result, comparison))]), // prettier-ignore
  ].join('\n');
}

/** One lot: its groups as a table, its comparisons below. */
function lotLines(words: Words, trial: Trial, result: Result, lot: string): string[] {
  const { ui } = words;
  const groups = result.groups.filter((group) => group.lot === lot);
  const rows = groups.map((group) => [
    groupName(words, trial, group),
    words.units(trial, group),
    estimateText(words, result, group),
    limitsText(words, result, group),
  ]);
  const head = [ui['table.treatment'], ui['table.units'], ui['table.estimate'], ui['table.interval']];
  return [
    words.lotName(trial, lot),
    ...columns([head, ...rows]),
    ...result.comparisons
      .filter((comparison) => comparison.lot === lot)
      .flatMap((comparison) => comparisonLines(words, trial, result, comparison)),
  ];
}

/** The survival lines of a storage series as a table, and how they compare. Why one is missing, a caveat says. */
function storageLines(words: Words, trial: Trial, analysis: Analysis, result: Result): string[] {
  const lots = [...new Set((result.storage ?? []).map(({ lot }) => lot))];
  const found = words.storageFindings(trial, analysis, result);
  return lots.flatMap((lot) => {
    const { head, rows } = linesTable(words, trial, result, lot);
    const name = lots.length > 1 ? [words.lotName(trial, lot)] : [];
    const said = found.filter(({ treatment, ...other }) => treatment === null && other.lot === lot);
    return [
      '',
      ...name,
      ...columns([head, ...rows]),
      ...said.flatMap(({ sentence }) => ['', ...wrapped(sentence, WIDTH - 2).split('\n').map((line) => `  ${line}`)]), // prettier-ignore
    ];
  });
}

function groupName(words: Words, trial: Trial, { treatment, stored }: Group): string {
  const label = words.treatmentLabel(trial, treatment);
  if (stored === null) return label;
  const years = Number.isInteger(stored) ? words.counted(stored, 'year') : words.quantity(stored, 'years');
  return `${label}, ${years}`;
}

function estimateText(words: Words, { unit }: Result, { estimate, count, seeds }: Group): string {
  if (estimate === null && count !== null) return words.counted(count, 'seed');
  return words.quantity(estimate, unit, seeds);
}

function limitsText(words: Words, { unit }: Result, { interval, seeds }: Group): string {
  if (interval === null) return '';
  const limit = (value: number | null) => words.quantity(value, unit, seeds);
  return words.say('stats.limits', { lower: limit(interval.lower), upper: limit(interval.upper) });
}

/** Who against whom, the difference, its range and the verdict. */
function comparisonLines(words: Words, trial: Trial, result: Result, comparison: Comparison): string[] {
  const { interval, estimate } = comparison;
  const range = interval
    ? ` (${words.range(interval.lower, interval.upper, result.measure, result.unit, result)})`
    : '';
  const luck = seedLuckOnly(interval) ? `, ${words.ui['table.seedLuckOnly']}` : '';
  const figure = estimate === null ? '' : `${words.difference(estimate, result)}${range}${luck}: `;
  const verdict = words.verdict(result, comparison).words;
  return [
    ...wrapped(words.comparisonName(trial, comparison), WIDTH - 2).split('\n').map((line) => `  ${line}`),
    ...wrapped(`${figure}${verdict}`, WIDTH - 4).split('\n').map((line) => `    ${line}`),
  ]; // prettier-ignore
}

function caveatTexts(words: Words, trial: Trial, { caveats, ...analysis }: Analysis): string[] {
  if (caveats.length === 0) return [];
  const lines = caveats.map((caveat) => {
    const { sentence } = words.caveat(trial, { ...analysis, caveats }, caveat);
    const weight = caveat.weight === 'note' ? '' : `${words.ui[`weight.${caveat.weight}`]}: `;
    return `- ${wrapped(weight + sentence, WIDTH - 2).replaceAll('\n', '\n  ')}`;
  });
  return [[...new Set(lines)].join('\n')]; // one said of two outcomes alike is said once
}

/** Rows in columns with two blanks between; the first column gives way so that the line fits. */
function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const others = widths.slice(1).reduce((sum, width) => sum + width + 2, 2);
  const room = Math.max(12, Math.min(widths[0] ?? 0, WIDTH - others));
  return rows.flatMap(([name = '', ...cells]) => {
    const [first = '', ...more] = wrapped(name, room).split('\n');
    const line = [first.padEnd(room), ...cells.map((cell, index) => cell.padEnd(widths[index + 1] ?? 0))].join('  ');
    return [`  ${line.trimEnd()}`, ...more.map((rest) => `  ${rest}`)];
  });
}
