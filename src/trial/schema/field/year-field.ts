import * as z from 'zod';
import { dateRefusal } from '../../text/date-refusal.ts';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** A year, or a whole date where it is known. */
export function yearField() {
  return z
    .string()
    .trim()
    .superRefine((text, context) => {
      if (/^(1[89]|2[01])\d{2}$/.test(text) || dateRefusal(text) === null) return;
      refuse(context, {
        rule: 'not-a-date',
        message: `expected a year such as 2025, or a date such as 2025-09-14; found ${shown(text)}`,
        remedy: 'Write the year alone where the day is not known.',
      });
    })
    .meta({ type: ['string', 'integer'] }); // editors take 2025 for a number
}
