import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** A web address: http or https, nothing else. */
export function linkField() {
  return z
    .string()
    .transform((written, context) => {
      const text = written.trim();
      if (/^https?:\/\//i.test(text) && URL.canParse(text) && !/[\s"<>\\]/.test(text)) return text;
      refuse(context, {
        rule: 'bad-link',
        message: `expected a web address such as https://example.org/trial; found ${shown(text)}`,
        remedy: 'Write the whole address, beginning with https:// or http://.',
      });
      return z.NEVER;
    })
    .meta({ type: 'string', format: 'uri' });
}
