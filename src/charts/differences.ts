import type { Analysis, Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { sentence } from '../wording/sentence.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { differencePlot } from './difference-plot.ts';
import { differenceScale } from './difference-scale.ts';
import { placeOf } from './place-of.ts';
import { intervalNotes } from './interval-marks.ts';
import { NARROW, WIDE, type RowRoom } from './row-layout.ts';

/** One comparison and the result that it belongs to. */
export interface Difference {
  readonly result: Result;
  readonly comparison: Comparison;
}

/**
 * Differences from the control on one axis: a mark and an interval for each comparison, a line at no difference, and a pale
 * strip as wide as what was too small to matter. Takes every comparison of one outcome, or of several of one unit
 * (all that compare germination), in their order.
 *
 * @param room `WIDE` for paper, where a row has its notes in one line, and a lot that all rows share stands below
 * @throws {RangeError} when the results are of different units: they have no common axis
 */
export function differences(
  trial: Trial,
  analysis: Analysis,
  ofOutcomes: Result | readonly Result[],
  words: Words,
  room: RowRoom = NARROW,
): Chart {
  const results = [ofOutcomes].flat();
  const units = new Set(results.map(({ unit }) => unit));
  if (units.size > 1) throw new RangeError(`differences needs results of one unit, got ${[...units].join(' and ')}`);
  const rows = results.flatMap((result) => result.comparisons.map((comparison) => ({ result, comparison })));
  const [first] = results;
  const control = trial.treatments.find((treatment) => treatment.control)?.id ?? '';
  const anyMargin = rows.some(({ result }) => result.matters !== null);
  const scale = differenceScale(rows);
  const places = new Set(rows.map(({ comparison }) => placeOf(trial, comparison, words)));
  const isShared = room === WIDE && places.size === 1 && !isOfOneTreatment(rows);
  const place = isShared ? ([...places][0] ?? null) : null;
  return {
    kind: 'differences',
    title:
      results.length === 1 && first
        ? chartTitle(trial, analysis, first, first.comparisons, words)
        : words.list(results.map((result) => words.outcomeTitle(trial, result))),
    subtitle: [
      ...(place === null ? [] : [`${sentence(place)}.`]),
      ...(trial.lots.length > 1 && isOfOneTreatment(rows)
        ? [
            words.say('chart.pair', {
              treatment: words.treatmentLabel(trial, rows[0]?.comparison.treatment ?? ''),
              control: words.treatmentLabel(trial, control),
            }),
          ]
        : []),
      words.say(anyMargin ? 'chart.differences.subtitle' : 'chart.differences.subtitleNoMargin', {
        control: words.treatmentLabel(trial, control),
      }),
      ...(rows.some(({ comparison }) => tooCoarse(comparison)) ? [words.ui['chart.tooCoarse']] : []),
      ...intervalNotes(
        rows.map(({ comparison }) => comparison.interval),
        scale,
        words,
      ),
    ].join(' '),
    description: words.say('chart.differences.description', {
      values: rows.map((row) => inWords(trial, row, words)).join(' '),
    }),
    table: {
      head: [
        words.ui['table.outcome'],
        words.ui['table.comparison'],
        words.ui['table.difference'],
        words.ui['table.interval'],
        words.ui['table.finding'],
      ],
      rows: rows.map(({ result, comparison }) => [
        words.outcomeTitle(trial, result),
        words.comparisonName(trial, comparison),
        tooCoarse(comparison) ? words.ui['table.notKnown'] : words.difference(comparison.estimate, result),
        rangeInWords(result, comparison, words) ?? words.ui['table.none'],
        words.verdict(result, comparison).words,
      ]),
    },
    spec: differencePlot(trial, rows, scale, words, room, place !== null),
  };
}

/** True where every row compares the same treatment: the subtitle names it once, and the rows their lots. */
export const isOfOneTreatment = (rows: readonly Difference[]): boolean =>
  new Set(rows.map(({ comparison }) => comparison.treatment)).size === 1;

/** What the data fit with, in words; null where there is no interval. */
export function rangeInWords(result: Result, { interval, unit }: Comparison, words: Words): string | null {
  if (interval === null || interval.lower === null || interval.upper === null) return null;
  return words.range(interval.lower, interval.upper, result.measure, unit, result);
}

/** True where checks were too far apart to say how large a difference in time is (methods 5): drawn without a mark. */
export const tooCoarse = ({ interval }: Comparison): boolean => interval?.method === 'welch-bracket';

/** A row as its words in the picture say it: what limits the number comes before it. */
function inWords(trial: Trial, { result, comparison }: Difference, words: Words): string {
  const range = rangeInWords(result, comparison, words);
  const values = [
    words.verdict(result, comparison).words,
    ...(tooCoarse(comparison) ? [] : [words.difference(comparison.estimate, result)]),
    ...(range === null ? [] : [range]),
  ];
  return words.say('chart.named', { name: words.comparisonName(trial, comparison), values: values.join('; ') });
}
