import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { lotName } from './lot-name.ts';

/** Where a comparison was made: "Leek ‘Fenpost’", "all lots together", "2 of 3 lots together". */
export function lotsName(trial: Trial, { lot, lots }: Comparison): string {
  if (lot !== 'all') return lotName(trial, lot);
  const pooled = lots?.length ?? trial.lots.length;
  return pooled === trial.lots.length ? 'all lots together' : `${pooled} of ${trial.lots.length} lots together`;
}
