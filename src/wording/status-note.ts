import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from './words.ts';

/**
 * How far a trial is that is not finished; null for one that is. A storage series is told as far as it has come.
 * That a later change would show is said of a frozen plan alone.
 */
export function statusNote({ ui }: Words, { status, plan }: Trial, { results }: Analysis): string | null {
  if (status === 'finished') return null;
  if (status === 'planned' && plan !== null) return ui['statusNote.frozen'];
  return status === 'growing' && results.length > 0 ? ui['statusNote.soFar'] : ui[`statusNote.${status}`];
}
