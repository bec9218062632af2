import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** A DOI such as 10.1000/182; the address in front of it is taken off. */
export function doiField() {
  return z
    .string()
    .transform((written, context) => {
      const text = written.trim().replace(/^(https?:\/\/(dx\.)?doi\.org\/|doi:\s*)/i, '');
      if (/^10\.\d{4,9}\/[^\s"<>\\]+$/.test(text)) return text;
      refuse(context, {
        rule: 'bad-doi',
        message: `expected a DOI such as 10.1000/182; found ${shown(written)}`,
        remedy: 'Copy the part that begins with "10.".',
      });
      return z.NEVER;
    })
    .meta({ type: 'string' });
}
