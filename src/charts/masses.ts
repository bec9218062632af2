import type { Analysis, Moisture } from '../analysis/analysis.ts';
import { massesOf, type Masses } from '../analysis/moisture/masses-of.ts';
import type { Trial, Weighing } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { massPlot } from './mass-plot.ts';

/** The same seeds before and after a treatment. */
export interface WeighedPair {
  readonly lot: string;
  readonly treatment: string | null;
  readonly batch: string | null;
  readonly repeat: string | null;
  /** Grams of seed, without the container. */
  readonly before: number;
  readonly after: number;
  /** Mass after, % of the mass before, and what the steps of the scale allow. */
  readonly left: number;
  readonly range: { readonly lower: number; readonly upper: number } | null;
}

/**
 * Seed mass after the treatment as a share of the mass before, a line for each batch and repeat that was weighed twice, with what
 * the steps of the scale allow. Shares put a spoonful and a sackful on one axis; the grams stand in the table.
 *
 * @returns null where nothing was weighed before and after
 */
export function masses(trial: Trial, analysis: Analysis, words: Words): Chart | null {
  const pairs = weighedPairs(trial, analysis);
  if (pairs.length === 0) return null;
  const findings = [...Map.groupBy(pairs, ({ lot, treatment }) => `${lot} ${treatment}`).values()].map((same) =>
    words.say('chart.headlineOf', { name: nameOf(trial, same[0], words), value: leftInWords(same, words) }),
  );
  const { ui } = words;
  return {
    kind: 'masses',
    title: findings.length <= 2 ? findings.join('; ') : ui['chart.masses.title'],
    subtitle: ui['chart.masses.subtitle'],
    description: words.say('chart.masses.description', {
      values: pairs.map((pair) => pairInWords(trial, pair, words)).join(' '),
    }),
    table: {
      head: [
        ui['table.lot'],
        ui['table.treatment'],
        ui['table.batch'],
        ui['moisture.repeat'],
        ui['chart.massBefore'],
        ui['chart.massAfter'],
        ui['chart.masses.axis'],
        ui['moisture.range'],
      ],
      rows: pairs.map((pair) => [
        words.lotName(trial, pair.lot),
        pair.treatment === null ? ui['table.none'] : words.treatmentLabel(trial, pair.treatment),
        pair.batch ?? '',
        pair.repeat ?? '',
        words.number(pair.before),
        words.number(pair.after),
        words.number(pair.left, 1),
        pair.range
          ? words.say('chart.fromTo', {
              lower: words.number(pair.range.lower, 1),
              upper: words.number(pair.range.upper, 1),
            })
          : ui['table.notKnown'],
      ]),
    },
    spec: massPlot(trial, pairs, words),
  };
}

function weighedPairs(trial: Trial, analysis: Analysis): WeighedPair[] {
  return trial.lots.flatMap(({ id: lot }) =>
    massesOf(trial.weighings.filter((weighing) => weighing.lot === lot)).flatMap((weighed) => {
      const found = analysis.moisture.find((row) => row.lot === lot && isOf(row, weighed));
      if (!weighed.before || !weighed.after || found?.waterLost == null) return [];
      const { lower, upper } = found.waterLostRange ?? { lower: null, upper: null };
      return [
        {
          lot,
          treatment: weighed.treatment,
          batch: weighed.batch,
          repeat: weighed.repeat,
          before: seedIn(weighed.before),
          after: seedIn(weighed.after),
          left: 100 - found.waterLost,
          range: lower === null || upper === null ? null : { lower: 100 - upper, upper: 100 - lower },
        },
      ];
    }),
  );
}

const isOf = (row: Moisture, { treatment, batch, repeat }: Masses) =>
  row.treatment === treatment && row.batch === batch && row.repeat === repeat;

const seedIn = ({ mass, container }: Weighing) => mass - (container ?? 0);

function pairInWords(trial: Trial, pair: WeighedPair, words: Words): string {
  const about = [nameOf(trial, pair, words), words.lotName(trial, pair.lot)];
  if (pair.batch !== null) about.push(`${words.ui['table.batch']} ${pair.batch}`);
  if (pair.repeat !== null) about.push(`${words.ui['moisture.repeat']} ${pair.repeat}`);
  const grams = { before: words.number(pair.before), after: words.number(pair.after) };
  return words.say('chart.named', { name: about.join(', '), values: words.say('chart.beforeAfter', grams) });
}

const nameOf = (trial: Trial, pair: WeighedPair | undefined, words: Words) =>
  pair?.treatment == null ? words.lotName(trial, pair?.lot ?? '') : words.treatmentLabel(trial, pair.treatment);

/** "95.9 % of the mass before", "95.1 % to 96.2 % of the mass before". */
export function leftInWords(pairs: readonly WeighedPair[], words: Words): string {
  const said = (value: number) => words.quantity(value, '%');
  const lower = said(Math.min(...pairs.map(({ left }) => left)));
  const upper = said(Math.max(...pairs.map(({ left }) => left)));
  const share = lower === upper ? lower : words.say('chart.fromTo', { lower, upper });
  return words.say('chart.masses.left', { share });
}
