import type { UnitKind } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { containerWord } from './container-word.ts';
import { plural } from './plural.ts';

/** What one unit is called in this trial: its container, the batch treated together, or its block. */
export function unitWord(trial: Trial, kind: UnitKind, count = 1): string {
  const word = singular(trial, kind);
  return count === 1 ? word : plural(word);
}

function singular({ sowing }: Trial, kind: UnitKind): string {
  if (kind === 'batch') return 'batch';
  if (kind === 'block') return sowing.block?.trim().toLowerCase() || 'block';
  const word = containerWord(sowing.container);
  return kind === 'tray' && !['dish', 'box', 'plate', 'tub', 'pan', 'flat'].includes(word) ? 'tray' : word;
}
