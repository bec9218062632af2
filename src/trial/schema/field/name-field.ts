import * as z from 'zod';
import { plainText } from '../../text/plain-text.ts';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** What a grower calls a sowing, batch, block, plant …: short text of any letters, matched exactly. */
export function nameField() {
  return z
    .string()
    .transform((written, context) => {
      const text = plainText(written);
      if (text !== '' && text.length <= 100) return text;
      refuse(context, {
        rule: 'name-too-long',
        message: `expected a short name, such as s07; found ${shown(text)}${text === '' ? '' : `, ${text.length} characters`}`,
        remedy: 'Write a name of at most 100 characters; put the rest into a note.',
      });
      return z.NEVER;
    })
    .meta({ type: 'string', maxLength: 100 });
}
