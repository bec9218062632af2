import type { LotTest } from '../analysis/lot-tests.ts';
import { seedLuckOnly } from '../analysis/seed-luck-only.ts';
import type { Words } from '../wording/words.ts';
import { lotTestsTable } from '../wording/tables/lot-tests-table.ts';
import type { Chart } from './chart.ts';
import { lotPlot } from './lot-plot.ts';
import { CONTROL_STYLE, seriesStyle, type TreatmentStyle } from './series-style.ts';

/** The tests of one lot under one treatment of one trial: what may be joined, for all else differs between trials. */
export interface LotSeries {
  readonly label: string;
  readonly style: TreatmentStyle;
  readonly tests: readonly LotTest[];
}

/** More series than this nobody tells apart. */
const MOST = 12;

/**
 * How much of a lot came up over the years: a mark with its range for each test. Only tests of one storage series are
 * joined. Draws finished numbers; computes none.
 *
 * @param tests by date (`lotTests`)
 * @returns null where the lot was tested on one date only, as nothing is over time then, or in more series than can be
 * told apart; the table says it all
 */
export function lotGermination(name: string, tests: readonly LotTest[], words: Words): Chart | null {
  const [first, last] = [tests[0], tests.at(-1)];
  const series = seriesOf(tests, words);
  if (!first || !last || first.date === last.date || series.length > MOST) return null;
  const values = tests.map(
    ({ trial, result, group, date }) => `${words.date(date)}, ${words.groupSentence(trial, result, group)}.`,
  );
  return {
    kind: 'lot',
    title: words.say('chart.lot.title', { lot: name, from: words.date(first.date), to: words.date(last.date) }),
    subtitle: [
      words.ui['chart.lot.subtitle'],
      ...(tests.some(({ group }) => seedLuckOnly(group.interval)) ? [words.ui['chart.seedLuckOnly']] : []),
    ].join(' '),
    description: words.say('chart.lot.description', { values: values.join(' ') }),
    table: lotTestsTable(words, tests),
    spec: lotPlot(series, words),
  };
}

function seriesOf(tests: readonly LotTest[], words: Words): readonly LotSeries[] {
  const several = new Set(tests.map(({ trial }) => trial.id)).size > 1;
  const groups = Map.groupBy(tests, ({ trial, group }) => `${trial.id} ${group.treatment}`);
  return [...groups.values()].map((members, place) => {
    const [{ trial, group }] = members as [LotTest];
    const treatment = words.treatmentLabel(trial, group.treatment);
    return {
      label: several ? `${treatment}: ${trial.title}` : treatment,
      style: place === 0 ? CONTROL_STYLE : seriesStyle(place - 1),
      tests: members,
    };
  });
}
