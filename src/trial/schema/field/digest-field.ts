import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** A SHA-256 digest: 64 hexadecimal digits in lower case. */
export function digestField() {
  return z
    .string()
    .trim()
    .superRefine((text, context) => {
      if (/^[0-9a-f]{64}$/.test(text)) return;
      refuse(context, {
        rule: 'bad-digest',
        message: `expected a SHA-256 digest of 64 digits and letters a to f; found ${shown(text)}`,
        remedy: 'Leave it as the tool wrote it; without a digest the plan is taken as stated by the authors.',
      });
    });
}
