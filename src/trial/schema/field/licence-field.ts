import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** An SPDX licence id or expression; its form is checked, not the list of licences. */
export function licenceField() {
  return z
    .string()
    .trim()
    .superRefine((text, context) => {
      if (/^[A-Za-z0-9.+-]+( (AND|OR|WITH) [A-Za-z0-9.+-]+)*$/.test(text)) return;
      refuse(context, {
        rule: 'bad-licence',
        message: `expected an SPDX licence id such as CC-BY-4.0 or CC0-1.0; found ${shown(text)}`,
        remedy: 'Look the short name up at https://spdx.org/licenses/.',
      });
    });
}
