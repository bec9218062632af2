import * as z from 'zod';
import { massInGrams } from './columns.ts';
import { dateField } from './field/date-field.ts';
import { nameField } from './field/name-field.ts';

/** A row of weighings.csv. */
export const weighingsRow = z
  .strictObject({
    lot: nameField().describe('Seed lot'),
    treatment: nameField().nullish().describe('Treatment; may be empty before treatment'),
    stage: z.enum(['before', 'after', 'oven-dry']).describe('As received, after the treatment, after oven drying'),
    mass: massInGrams().describe('Mass, container included where container is given; unit in brackets'),
    container: massInGrams().nullish().describe('Mass of the empty container; unit in brackets'),
    repeat: nameField().nullish().describe('Number of the repeat'),
    'scale step': massInGrams().nullish().describe('Step in which the scale reads; unit in brackets'),
    batch: nameField().nullish().describe('What was treated separately'),
    date: dateField().nullish().describe('When it was weighed'),
  })
  .describe('Masses, for water lost and moisture');
