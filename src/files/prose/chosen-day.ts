import type { Trial } from '../../trial/trial.ts';
import { oneOf } from './one-of.ts';

/**
 * The day whose pictures an author placed, as it was written; null: those of all days.
 *
 * @throws {AttributeError} for a day without pictures
 */
export function chosenDay(trial: Trial, day: string | undefined): string | null {
  const days = [...new Set(trial.photos.flatMap((photo) => (photo.day === null ? [] : [String(photo.day)])))];
  if (day === undefined && trial.photos.length > 0) return null;
  return oneOf('<Photos day>', day, days);
}
