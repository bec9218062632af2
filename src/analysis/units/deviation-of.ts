import type { Trial } from '../../trial/trial.ts';

/** What happened to a sowing that its authors left out, in their words; null where it was not left out. */
export function deviationOf(trial: Trial, sowing: string): string | null {
  return trial.events.find(({ action, sowings }) => action === 'left-out' && sowings.includes(sowing))?.what ?? null;
}
