import type { Trial } from '../trial/trial.ts';
import { SOWING_COLUMNS, sowingCells } from './sowing-columns.ts';
import type { Column, Table } from './table.ts';

const total = (name: string, meaning: string): Column => ({ name, type: 'integer', unit: 'seeds', meaning });
const COLUMNS: readonly Column[] = [
  ...SOWING_COLUMNS,
  total(
    'germinated',
    'Seeds germinated up to this day, as trial.yaml defines it; empty: not checked, which is not zero.',
  ),
  total('abnormal', 'Abnormal seedlings up to this day.'),
  total('hard', 'Hard seeds, which took up no water, on this day.'),
  total('fresh', 'Fresh seeds, swollen but not germinated, on this day.'),
  total('dead', 'Dead seeds on this day.'),
  { name: 'scorer', type: 'string', unit: null, meaning: 'Who counted.' },
  { name: 'note', type: 'string', unit: null, meaning: 'Note of the person who counted.' },
];

/** Every check of every sowing, one row each, totals up to the day; in the order of the raw file. */
export function countsLong(trial: Trial): Table {
  const sowings = new Map(trial.sowings.map((sowing) => [sowing.id, sowing]));
  return {
    name: 'counts-long',
    title: 'Germination counts, one row a check of one sowing',
    columns: COLUMNS,
    rows: trial.counts.flatMap(({ sowing: id, day, germinated, abnormal, hard, fresh, dead, scorer, note }) => {
      const sowing = sowings.get(id);
      return sowing ? [[...sowingCells(sowing, day), germinated, abnormal, hard, fresh, dead, scorer, note]] : [];
    }),
  };
}
