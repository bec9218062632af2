import type { Pooled } from '../analysis/pooled.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { differenceScale } from './difference-scale.ts';
import { pooledPlot, type PooledLine } from './pooled-plot.ts';

/** Weights are said in whole percent, as shares of fewer than 200 are. */
const WHOLE = 100;

/**
 * The trials of one question, a row each with equal marks, those that cannot tell alone among them; then all together, and
 * where a next repeat may fall. Takes the numbers of the analysis as they are.
 */
export function pooledChart(pooled: Pooled, words: Words): Chart {
  const { ui } = words;
  const said = words.pooled(pooled);
  const { estimate, interval, nextResult } = pooled;
  const lines: readonly (PooledLine & { readonly said: readonly string[] })[] = [
    ...pooled.trials.map((trial, index) => {
      const row = said.trials[index];
      return {
        kind: trial.basis === 'half-seeds' ? ('one-tray' as const) : ('trial' as const),
        label: words.list(trial.growers),
        notes: [row?.finding ?? '', row?.bareDifference ?? '', row?.bareRange ?? ''],
        said: [row?.finding ?? '', row?.difference ?? '', row?.range ?? ''],
        estimate: trial.estimate,
        range: trial,
      };
    }),
    ...(said.together && interval
      ? [
          {
            kind: 'together',
            label: ui['chart.together'],
            notes: [said.mark.words, said.together.bareDifference, said.together.bareRange],
            said: [said.mark.words, said.together.difference, said.together.range],
            estimate,
            range: interval,
          } as const,
        ]
      : []),
    ...(said.nextResult && nextResult
      ? [
          {
            kind: 'next',
            label: ui['chart.nextRepeat'],
            notes: [said.nextResult.bareRange],
            said: [said.nextResult.range],
            estimate: null,
            range: nextResult,
          } as const,
        ]
      : []),
  ];
  const scale = differenceScale(lines.map(({ range, ...line }) => ({ result: pooled, comparison: { ...line, interval: range } }))); // prettier-ignore
  const cutOff = lines.some(({ range }) => (range.lower ?? 0) < scale.low || (range.upper ?? 0) > scale.high);
  return {
    kind: 'pooled',
    title: said.headline,
    subtitle: [
      ui[interval ? 'chart.pooled.subtitle' : 'chart.pooled.subtitleFew'],
      ...(pooled.matters === null ? [] : [ui['chart.pooled.strip']]),
      ...(lines.some(({ kind }) => kind === 'one-tray') ? [ui['chart.pooled.oneTray']] : []),
      ...(cutOff ? [ui['chart.goesOn']] : []),
    ].join(' '),
    description: words.say('chart.pooled.description', {
      values: lines
        .map(({ label, said: texts }) => words.say('chart.named', { name: label, values: texts.join('; ') }))
        .join(' '),
    }),
    table: {
      head: [ui['chart.trial'], ui['report.by'], ui['table.difference'], ui['table.interval'], ui['question.weight'], ui['question.alone']], // prettier-ignore
      rows: [
        ...pooled.trials.map(({ title, growers, weight }, index) => [
          title,
          words.list(growers),
          said.trials[index]?.difference ?? '',
          said.trials[index]?.range ?? '',
          weight === null ? ui['table.none'] : words.quantity(weight, '%', WHOLE),
          said.trials[index]?.finding ?? '',
        ]),
        ...(said.together
          ? [[ui['chart.together'], '', said.together.difference, said.together.range, words.quantity(100, '%', WHOLE), said.mark.words]] // prettier-ignore
          : []),
        ...(said.nextResult ? [[ui['chart.nextRepeat'], '', '', said.nextResult.range, '', '']] : []),
      ],
    },
    spec: pooledPlot(pooled, lines, scale, words),
  };
}
