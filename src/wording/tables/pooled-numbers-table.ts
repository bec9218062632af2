import type { Range } from '../../analysis/analysis.ts';
import type { Pooled } from '../../analysis/pooled.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/** Every number behind a pooled answer, for readers with statistics; below them the answer without each trial in turn. */
export function pooledNumbersTable(words: Words, pooled: Pooled): TextTable {
  const { ui } = words;
  const { estimate, interval, test, q, tau2, i2, guarded } = pooled;
  const number = (value: number | null, digits = 2) =>
    value === null ? ui['table.none'] : words.number(value, digits);
  const limits = (range: Range | null) =>
    range === null
      ? ui['table.none']
      : words.say('stats.limits', { lower: number(range.lower), upper: number(range.upper) });
  const unit = words.unitName(pooled.unit);
  return {
    head: [ui['table.value'], ui['question.together']],
    rows: [
      [ui['table.difference'], `${number(estimate)} ${unit}`],
      [ui['table.interval'], limits(interval)],
      [
        ui['stats.method'],
        interval === null ? '' : ui[interval.method === 'normal' ? 'stats.normal' : 'stats.knappHartung'],
      ],
      [ui['stats.guarded'], ui[guarded ? 'stats.yes' : 'stats.no']],
      ...(test === null
        ? []
        : [
            [test.df === null ? 'z' : 't', number(test.statistic, 3)],
            [ui['stats.df'], number(test.df, 0)],
            [ui['stats.p'], words.pValue(test.p)],
          ]),
      [ui['stats.tau2'], number(tau2)],
      [ui['stats.i2'], i2 === null ? '' : words.quantity(i2, '%')],
      ...(q === null
        ? []
        : [
            [ui['stats.q'], number(q.statistic)],
            [ui['stats.qDf'], number(q.df, 0)],
            [ui['stats.qP'], words.pValue(q.p)],
          ]),
      [ui['stats.prediction'], limits(pooled.prediction)],
      [ui['stats.nextResult'], limits(pooled.nextResult)],
      ...pooled.leaveOneOut.map(({ trial, estimate: left, ...range }) => [
        words.say('stats.without', { title: pooled.trials.find((row) => row.trial === trial)?.title ?? trial }),
        words.say('stats.withRange', { estimate: number(left), range: limits(range) }),
      ]),
    ],
  };
}
