import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { Trial } from '../../../trial/trial.ts';
import { list } from '../list.ts';

/** "Einweichen und Lagertemperatur". */
export const changesText = (trial: Trial, changes: Evidence['two-changes']['changes']): string =>
  list(changes.map(({ what }) => (what === 'varies' ? VARIES[trial.varies ?? 'other'] : WHAT[what])));

const WHAT = { soak: 'Einweichen', temperature: 'Lagertemperatur', moisture: 'Lagerfeuchte' } as const;
const VARIES = {
  soak: 'Einweichen',
  drying: 'Trocknen',
  storage: 'Lagerung',
  light: 'Licht',
  temperature: 'Temperatur',
  medium: 'Substrat',
  dressing: 'Beizung',
  age: 'Alter des Saatguts',
  other: 'das, wonach gefragt wird',
} as const;
