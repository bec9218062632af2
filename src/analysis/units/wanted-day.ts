import type { Outcome } from '../../trial/trial.ts';

/** The day that the outcome names for a lot; null where none is named for it. */
export function wantedDay({ day }: Outcome, lot: string): number | null {
  return day === null || typeof day === 'number' ? day : (day[lot] ?? null);
}
