import type { Analysis, Result } from '../analysis/analysis.ts';
import type { SurvivalLine } from '../analysis/survival-line.ts';
import { survivalCurve } from '../analysis/storage/survival-curve.ts';
import type { Trial } from '../trial/trial.ts';
import { storageTime } from '../wording/storage-time.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { groupRows, type GroupRow } from './group-rows.ts';
import { intervalNotes } from './interval-marks.ts';
import { survivalPlot } from './survival-plot.ts';
import { valueText } from './value-text.ts';

/** More are named in the key only. */
const MOST_IN_TITLE = 3;

/**
 * What came up of one lot over its time in storage: a point with its range at each test, and the fitted line of each
 * treatment, dashed, from the first test to the last.
 *
 * @param result of the measure `storage`
 */
export function survival(trial: Trial, _: Analysis, result: Result, lot: string, words: Words): Chart {
  const rows = groupRows(trial, result, [lot], words);
  const lines = (result.storage ?? []).filter((line) => line.lot === lot);
  const intervals = rows.map(({ group }) => group.interval);
  const titles = lines.map((line) => halfOf(trial, line, words));
  return {
    kind: 'survival',
    title: titles.length > 0 && titles.length <= MOST_IN_TITLE ? titles.join('; ') : words.ui['chart.storage.title'],
    subtitle: [words.ui['chart.storage.subtitle'], ...intervalNotes(intervals, { low: 0, high: 100, ticks: [] }, words)].join(' '), // prettier-ignore
    description: words.say('chart.storage.description', {
      values: rows.map(({ group }) => `${words.groupSentence(trial, result, group)}.`).join(' '),
    }),
    table: tableOf(trial, result, rows, lines, words),
    spec: survivalPlot(trial, rows, lines, words),
  };
}

function halfOf(trial: Trial, { treatment, halfLife, reason, tests }: SurvivalLine, words: Words): string {
  const name = words.treatmentLabel(trial, treatment);
  if (halfLife === null) return words.say(reason === 'not-yet' ? 'chart.storage.notYet' : 'chart.storage.noHalf', { name }); // prettier-ignore
  const times = tests.map(({ stored }) => stored);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const { perYear, digits } = storageTime(last);
  const within = (years: number | null) =>
    years === null || years < first || years > last ? words.ui['chart.storage.beyond'] : words.number(years * perYear, digits); // prettier-ignore
  return words.say('chart.storage.half', {
    name,
    time: words.duration(halfLife.estimate, last),
    lower: within(halfLife.lower),
    upper: within(halfLife.upper),
  });
}

function tableOf(
  trial: Trial,
  result: Result,
  rows: readonly GroupRow[],
  lines: readonly SurvivalLine[],
  words: Words,
): Chart['table'] {
  const { ui } = words;
  const said = (value: number | null) => valueText(value, result, words);
  const fitted = ({ treatment, stored }: GroupRow['group']) => {
    const line = lines.find((found) => found.treatment === treatment);
    const curve = line ? survivalCurve({ ...line, tests: [{ stored: stored ?? 0, estimate: 0 }] }) : [];
    return curve[0] ? said(curve[0].percent) : ui['table.none'];
  };
  return {
    head: [ui['table.treatment'], ui['table.stored'], ui['table.units'], ui['table.count'], ui['table.value'], ui['table.interval'], ui['table.fitted']], // prettier-ignore
    rows: rows.map(({ label, group }) => [
      label,
      words.quantity(group.stored, 'years'),
      words.units(trial, group),
      group.count === null || group.seeds === null
        ? ui['table.notKnown']
        : words.say('chart.countOf', { count: words.number(group.count), all: words.number(group.seeds) }),
      said(group.estimate),
      group.interval
        ? words.say('chart.fromTo', { lower: said(group.interval.lower), upper: said(group.interval.upper) })
        : ui['table.none'],
      fitted(group),
    ]),
  };
}
