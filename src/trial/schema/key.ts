import * as z from 'zod';
import { sowingName } from './columns.ts';
import { nameField } from './field/name-field.ts';

/** A row of key.csv: the treatment of a sowing. */
export const keyRow = z
  .strictObject({
    sowing: sowingName(),
    treatment: nameField().describe('Treatment, an id of trial.yaml'),
  })
  .describe('The treatment of each sowing, kept apart until the last count where counting is blind');
