import type { Comparison, Result } from '../analysis/analysis.ts';
import { relabelled } from '../analysis/relabelled.ts';
import type { Trial } from '../trial/trial.ts';
import { sentence } from '../wording/sentence.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { luckPlot, type Dealt } from './luck-plot.ts';

/**
 * What luck does: the real difference above those of 19 random relabellings of the same units. The draws come from
 * the trial's id, so that they are the same at every build. Several comparisons, of a lot each, stand on one axis.
 *
 * @returns null where there are too few arrangements, or nothing to relabel (`relabelled`)
 */
export function luckStrip(
  trial: Trial,
  result: Result,
  ofComparisons: Comparison | readonly Comparison[],
  words: Words,
): Chart | null {
  const all = [ofComparisons].flat().flatMap((comparison): Dealt[] => {
    const found = relabelled(trial.id, result, comparison);
    return found === null ? [] : [{ comparison, found, name: sentence(words.lotName(trial, comparison.lot)) }];
  });
  const [first] = all;
  if (!first) return null;
  return {
    kind: 'luck',
    ...(all.length === 1 ? toldOne(trial, result, first, words) : toldSeveral(trial, result, all, words)),
    subtitle: words.say(subtitleOf(first.comparison), {
      unit: words.unitWord(trial, true),
      all: words.number(first.found.others.length + 1),
    }),
    spec: luckPlot(trial, result, all, words),
  };
}

type Told = Pick<Chart, 'title' | 'description' | 'table'>;

function toldOne(trial: Trial, result: Result, { comparison, found }: Dealt, words: Words): Told {
  const sorted = inOrder(found.others).map((value) => words.difference(value, result));
  const key = found.asLarge === 0 ? 'luck.none' : found.asLarge === 1 ? 'luck.one' : 'luck.some';
  const counts = { deals: words.number(found.others.length), count: words.number(found.asLarge) };
  const real = words.difference(found.real, result);
  return {
    title: `${words.comparisonName(trial, comparison)}: ${words.say(key, counts)}`,
    description: words.say('luck.description', { real, values: sorted.join(', ') }),
    table: {
      head: [words.ui['luck.labels'], words.ui['table.difference']],
      rows: [[words.ui['luck.real'], real], ...sorted.map((value) => [words.ui['luck.dealt'], value])],
    },
  };
}

function toldSeveral(trial: Trial, result: Result, all: readonly Dealt[], words: Words): Told {
  const deals = words.number(all[0]?.found.others.length ?? 0);
  const told = all.map(({ comparison, found, name }) => ({
    name,
    comparison: words.comparisonName(trial, comparison),
    real: words.difference(found.real, result),
    count: words.number(found.asLarge),
    others: inOrder(found.others),
  }));
  return {
    title: words.say('luck.several', {
      deals,
      counts: told.map(({ name, count }) => words.say('luck.countIn', { name, count })).join(', '),
    }),
    description: words.say('luck.descriptionSeveral', {
      values: told
        .map(({ comparison, real, count, others }) =>
          words.say('luck.row', {
            name: comparison,
            real,
            lower: words.difference(others[0] ?? null, result),
            upper: words.difference(others.at(-1) ?? null, result),
            count,
            deals,
          }),
        )
        .join(' '),
    }),
    table: {
      head: [words.ui['luck.labels'], ...told.map(({ comparison }) => comparison)],
      rows: [
        [words.ui['luck.real'], ...told.map(({ real }) => real)],
        [words.say('luck.asLargeOf', { deals }), ...told.map(({ count }) => count)],
        ...(told[0]?.others ?? []).map((_, place) => [
          words.say('luck.dealtNumber', { number: words.number(place + 1) }),
          ...told.map(({ others }) => words.number(others[place] ?? 0, 1)),
        ]),
      ],
    },
  };
}

const inOrder = (values: readonly number[]) => values.toSorted((a, b) => a - b);

function subtitleOf({ units, lot }: Comparison): 'luck.subtitle' | 'luck.subtitleBlocks' | 'luck.subtitleLots' {
  if (units.kind !== 'block') return 'luck.subtitle';
  return lot === 'all' ? 'luck.subtitleLots' : 'luck.subtitleBlocks';
}
