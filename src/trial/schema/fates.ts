import * as z from 'zod';
import { categories, note, scorer, sowingName, when } from './columns.ts';

/** A row of fates.csv: what became of the seeds that are no normal seedlings. */
export const fatesRow = z
  .strictObject({
    sowing: sowingName(),
    ...when,
    ...categories,
    scorer: scorer(),
    note: note(),
  })
  .describe('What became of seeds that are no normal seedlings, beside counts.csv with a column for each day');
