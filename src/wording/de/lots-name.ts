import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { lotName } from './lot-name.ts';

/** Where a comparison was made: "Porree ‚Fenpost‘", "alle Partien zusammen", "2 von 3 Partien zusammen". */
export function lotsName(trial: Trial, { lot, lots }: Comparison): string {
  if (lot !== 'all') return lotName(trial, lot);
  const pooled = lots?.length ?? trial.lots.length;
  return pooled === trial.lots.length ? 'alle Partien zusammen' : `${pooled} von ${trial.lots.length} Partien zusammen`;
}
