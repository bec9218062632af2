import * as z from 'zod';
import { plainText } from '../../text/plain-text.ts';
import { numberRefusal, type NumberKind } from '../../text/number-refusal.ts';
import { refuse } from './refuse.ts';

/** A number written as text, as cells and YAML values arrive here; the JSON Schema says `number`. */
export function numberField(kind: NumberKind) {
  return z
    .string()
    .transform((written, context) => {
      const text = plainText(written);
      const refusal = numberRefusal(text, kind);
      if (refusal === null) return Number(text) + 0; // -0 is 0
      refuse(context, refusal);
      return z.NEVER;
    })
    .meta({ type: kind.whole ? 'integer' : 'number' });
}
