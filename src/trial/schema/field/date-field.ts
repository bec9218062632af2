import * as z from 'zod';
import { dateRefusal } from '../../text/date-refusal.ts';
import { plainText } from '../../text/plain-text.ts';
import { refuse } from './refuse.ts';

/** An ISO date such as 2026-04-04, and one that exists. */
export function dateField() {
  return z
    .string()
    .transform((written, context) => {
      const text = plainText(written);
      const refusal = dateRefusal(text);
      if (refusal === null) return text;
      refuse(context, refusal);
      return z.NEVER;
    })
    .meta({ type: 'string', format: 'date' });
}
