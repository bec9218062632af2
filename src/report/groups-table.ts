import type { Group, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import type { TextTable } from './numbers-table.ts';

/** One row a treatment of one lot: how much there was, what came of it, what the data fit with. */
export function groupsTable(words: Words, trial: Trial, result: Result, lot: string): TextTable {
  const groups = result.groups.filter((group) => group.lot === lot);
  const { ui } = words;
  const columns: readonly { head: string; cell(group: Group): string | null }[] = [
    { head: ui['table.treatment'], cell: (group) => words.treatmentLabel(trial, group.treatment) },
    { head: ui['table.stored'], cell: ({ stored }) => (stored === null ? null : words.quantity(stored, 'years')) },
    { head: ui['table.units'], cell: (group) => words.units(trial, group) },
    {
      head: ui['table.count'],
      cell: ({ count, seeds }) =>
        count === null || seeds === null ? null : words.say('table.countOf', { count, seeds }),
    },
    { head: ui['table.plants'], cell: ({ plants }) => (plants === null ? null : words.number(plants)) },
    { head: ui['table.estimate'], cell: (group) => words.quantity(group.estimate, result.unit, group.seeds) },
    {
      head: ui['table.interval'],
      cell: ({ interval }) =>
        interval === null || interval.lower === null || interval.upper === null
          ? null
          : words.say('stats.limits', {
              lower: words.number(interval.lower, 1),
              upper: words.number(interval.upper, 1),
            }),
    },
    {
      head: ui['stats.bracket'],
      cell: ({ bracket }) =>
        bracket === null || bracket.after === null || bracket.by === null
          ? null
          : words.say('stats.limits', { lower: words.number(bracket.after), upper: words.number(bracket.by) }),
    },
    { head: ui['stats.sd'], cell: ({ sd }) => (sd === null ? null : words.number(sd, 2)) },
    { head: ui['stats.icc'], cell: ({ icc }) => (icc === null ? null : words.number(icc, 2)) },
  ];
  const filled = columns.filter(({ cell }) => groups.some((group) => cell(group) !== null));
  return {
    head: filled.map(({ head }) => head),
    rows: groups.map((group) => filled.map(({ cell }) => cell(group) ?? '')),
  };
}
