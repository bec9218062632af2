import * as z from 'zod';
import { isMissing } from '../../text/is-missing.ts';
import { plainText } from '../../text/plain-text.ts';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** Ids stand in addresses and file names: letters a to z, digits, hyphen, underscore and point. */
export const ID = /^[A-Za-z0-9](?:[A-Za-z0-9._-]{0,62}[A-Za-z0-9])?$/;

/** The id of a trial, lot, treatment, outcome, person or question. */
export function idField() {
  return z
    .string()
    .transform((written, context) => {
      const text = plainText(written);
      if (ID.test(text) && !text.includes('..') && !isMissing(text)) return text;
      const reads = isMissing(text) && text !== '' ? ', which means "no value" in a table' : '';
      refuse(context, {
        rule: 'bad-id',
        message: `expected an id such as leek-2025; found ${shown(text)}${reads}`,
        remedy: 'Use letters a to z, digits and hyphens, at most 64; the full name goes into a label or title.',
      });
      return z.NEVER;
    })
    .meta({ type: 'string', pattern: ID.source });
}
