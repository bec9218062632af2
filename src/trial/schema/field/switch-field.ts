import * as z from 'zod';

/** yes or no; true and false are read the same. Editors take `yes` for a word, `true` for a switch: both are right. */
export function switchField() {
  return z
    .enum(['yes', 'no', 'true', 'false'])
    .transform((word) => word === 'yes' || word === 'true')
    .meta({ type: ['boolean', 'string'], enum: ['yes', 'no', true, false] });
}
