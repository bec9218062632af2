import * as z from 'zod';

/** yes or no; true and false are read the same. */
export function switchField() {
  return z
    .enum(['yes', 'no', 'true', 'false'])
    .transform((word) => word === 'yes' || word === 'true')
    .meta({ type: 'boolean', enum: [true, false] });
}
