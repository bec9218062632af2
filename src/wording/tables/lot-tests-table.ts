import type { LotTest } from '../../analysis/lot-tests.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';
import { withSeedLuck } from './with-seed-luck.ts';

/**
 * Every test of a lot: when, how treated, how much came up, what the data fit with, in how many trays. The trial and the day
 * of the count stand in it where there are several (a single day: `lotTestsCaption`).
 */
export function lotTestsTable(words: Words, tests: readonly LotTest[]): TextTable {
  const { ui } = words;
  const isSeries = tests.some(({ group }) => group.stored !== null);
  const several = new Set(tests.map(({ trial }) => trial.id)).size > 1;
  const days = new Set(tests.map(({ day }) => day)).size > 1;
  return {
    head: [
      ui['list.sown'],
      ...(several ? [ui['list.trial']] : []),
      ui['table.treatment'],
      ...(isSeries ? [words.say('chart.stored', { unit: words.unitName('years') })] : []),
      ui['table.count'],
      ui['table.share'],
      ui['table.interval'],
      ui['table.units'],
    ],
    rows: tests.map(({ trial, group, date, day }) => [
      words.date(date).replaceAll(' ', '\u00A0'),
      ...(several ? [trial.title] : []),
      words.treatmentLabel(trial, group.treatment),
      ...(isSeries ? [storedText(words, group.stored)] : []),
      countText(words, group, days ? day : null),
      group.estimate === null ? '' : words.number(group.estimate, digitsOf(group)),
      rangeText(words, group),
      words.units(trial, group),
    ]),
  };
}

/** No decimals below 200 seeds. */
const digitsOf = ({ seeds }: Pick<LotTest['group'], 'seeds'>): number => ((seeds ?? 0) < 200 ? 0 : 1);

const storedText = (words: Words, years: number | null): string =>
  years === null ? '' : words.number(years, Number.isInteger(years) ? 0 : 1);

function countText(words: Words, { count, seeds }: LotTest['group'], day: number | null): string {
  if (count === null || seeds === null) return '';
  const text = { count: words.number(count), seeds: words.number(seeds) };
  return day === null
    ? words.say('table.countOf', text)
    : words.say('lot.countOn', { ...text, day: words.number(day) });
}

/** With one tray the range holds the luck of seeds alone, and says so. */
function rangeText(words: Words, { interval, seeds }: LotTest['group']): string {
  if (interval?.lower == null || interval.upper == null) return '';
  const range = words.say('chart.fromTo', {
    lower: words.number(interval.lower, digitsOf({ seeds })),
    upper: words.number(interval.upper, digitsOf({ seeds })),
  });
  return withSeedLuck(words, range, interval);
}
