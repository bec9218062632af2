import * as z from 'zod';
import { when } from './columns.ts';
import { nameField } from './field/name-field.ts';
import { textField } from './field/text-field.ts';

/** A row of events.csv. */
export const eventsRow = z
  .strictObject({
    ...when,
    sowing: nameField().nullish().describe('Sowing it touched; empty: all'),
    what: textField().describe('What happened or was done'),
    action: z.enum(['left-out', 'kept', 'care']).describe('Left out of the comparison, kept, or care only'),
  })
  .describe('What touched some sowings only; the same as deviations and events of trial.yaml');
