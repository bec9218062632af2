import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { Trial } from '../../../trial/trial.ts';
import { list } from '../list.ts';

/** "soaking and storage temperature". */
export const changesText = (trial: Trial, changes: Evidence['two-changes']['changes']): string =>
  list(changes.map(({ what }) => (what === 'varies' ? VARIES[trial.varies ?? 'other'] : WHAT[what])));

const WHAT = { soak: 'soaking', temperature: 'storage temperature', moisture: 'storage moisture' } as const;
const VARIES = {
  soak: 'soaking',
  drying: 'drying',
  storage: 'storage',
  light: 'light',
  temperature: 'temperature',
  medium: 'medium',
  dressing: 'dressing',
  age: 'age of the seed',
  other: 'what the question asks about',
} as const;
