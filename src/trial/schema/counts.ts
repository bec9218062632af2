import * as z from 'zod';
import { categories, note, scorer, seedNumber, sowingName, when } from './columns.ts';

/** A row of counts.csv, long: one check of one sowing. */
export const countsRow = z
  .strictObject({
    sowing: sowingName(),
    ...when,
    germinated: seedNumber(0).nullable().describe('Seeds germinated; NC where not checked'),
    ...categories,
    scorer: scorer(),
    note: note(),
  })
  .describe(
    'Counts: a row for each check of a sowing, or a row for each sowing and a column for each day (`day 5`, or a date)',
  );

/** A row of counts.csv, wide: one sowing, with a further column for each count day. */
export const wideCountsRow = z.strictObject({ sowing: sowingName(), scorer: scorer() });

/** A cell below a count day. */
export const wideCountsCell = seedNumber(0).nullable().describe('Seeds germinated on the day in the heading');
