import * as z from 'zod';
import { shown } from '../../text/shown.ts';
import { refuse } from './refuse.ts';

/** How to reach someone: free text or a link, but no link of another kind than http, https and mailto. */
export function contactField() {
  return z
    .string()
    .trim()
    .max(300)
    .superRefine((text, context) => {
      const [, scheme] = /^([a-z][a-z0-9+.-]*):(?=\S)/i.exec(text) ?? [];
      if (scheme === undefined || /^(https?|mailto)$/i.test(scheme)) return;
      refuse(context, {
        rule: 'bad-link',
        message: `expected a web address, a mailto: address or plain text; found ${shown(text)}`,
        remedy: 'Links may begin with https://, http:// or mailto: only.',
      });
    });
}
