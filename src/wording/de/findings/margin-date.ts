import { date } from '../date.ts';
import type { Saying } from './saying.ts';

/** "Diese Schwelle wurde am 4. April 2026 gesetzt, vor dem Zählen."; nothing where no date is known. */
export function marginDate({ facts }: Saying): string {
  if (facts.marginDate === null) return '';
  const { date: day, stated } = facts.marginDate;
  return ` Diese Schwelle wurde am ${date(day)} gesetzt, vor dem Zählen${stated ? ', wie die Beteiligten angeben' : ''}.`;
}
