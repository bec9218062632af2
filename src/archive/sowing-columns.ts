import type { Sowing } from '../trial/trial.ts';
import type { Cell, Column } from './table.ts';

const text = (name: string, meaning: string): Column => ({ name, type: 'string', unit: null, meaning });

/** What both long tables say about the sowing of a row, so that each can be read alone. */
export const SOWING_COLUMNS: readonly Column[] = [
  text('sowing', 'Id of the sowing: one tray, dish, pot or row sown at one time.'),
  text('lot', 'Id of the seed lot (lots.yaml).'),
  text('treatment', 'Id of the treatment (trial.yaml); empty while a trial is counted blind.'),
  { name: 'stored', type: 'number', unit: 'years', meaning: 'Time in storage when sown; only in a storage series.' },
  text('block', 'The block (a place or a day shared by some sowings) in which the sowing stood.'),
  text('tray', 'The tray or dish that several sowings share, where they do.'),
  text('batch', 'What was treated or stored together: the cup, the drying run, the jar.'),
  {
    name: 'seeds',
    type: 'number',
    unit: 'seeds',
    meaning: 'Seeds sown; worked out from their mass where they were weighed.',
  },
  { name: 'date', type: 'date', unit: null, meaning: 'Date of the check, ISO 8601.' },
  { name: 'day', type: 'number', unit: 'days', meaning: 'Days since this sowing was sown (day 0).' },
];

/** The cells of SOWING_COLUMNS for a check of `sowing` on `day`. */
export function sowingCells(sowing: Sowing, day: number): readonly Cell[] {
  const { id, lot, treatment, stored, block, tray, batch, seeds, sown } = sowing;
  return [id, lot, treatment, stored, block, tray, batch, seeds, sown && dateAfter(sown, day), day];
}

function dateAfter(sown: string, day: number): string {
  return new Date(Date.parse(`${sown}T00:00:00Z`) + Math.floor(day) * 86_400_000).toISOString().slice(0, 10);
}
