import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** A language tag (BCP 47), such as en or en-GB. */
export function languageField() {
  return z
    .string()
    .trim()
    .superRefine((text, context) => {
      if (/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(text)) return;
      refuse(context, {
        rule: 'bad-language',
        message: `expected a language tag such as en or en-GB; found ${shown(text)}`,
        remedy: 'Write the two or three letters of the language, with the country behind a hyphen where it matters.',
      });
    });
}
