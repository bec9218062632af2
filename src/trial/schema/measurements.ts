import * as z from 'zod';
import { sowingName, when } from './columns.ts';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';

/** A row of measurements.csv: one plant, or one sowing as a whole; every further column is a trait. */
export const measurementsRow = z
  .strictObject({
    sowing: sowingName(),
    ...when,
    plant: nameField().nullish().describe('Number of the plant; empty: one measurement of the whole sowing'),
  })
  .describe(
    'Sizes: a row for each plant, or for each sowing as a whole; every further column is a trait with its unit in the heading, such as `height (mm)`',
  );

/** A cell of a trait. */
export const measurementsCell = numberField({ what: 'a number', example: '42' })
  .nullable()
  .describe('A trait, named in the heading with its unit');
