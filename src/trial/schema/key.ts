import * as z from 'zod';
import { sowingName } from './columns.ts';
import { nameField } from './field/name-field.ts';
import { textField } from './field/text-field.ts';

/** A row of key.csv: the treatment of a sowing. */
export const keyRow = z
  .strictObject({
    sowing: sowingName(),
    treatment: nameField().describe('Treatment, an id of trial.yaml'),
    seed: textField().nullish().describe('Seed of the random numbers from which the treatments were drawn'),
  })
  .describe('The treatment of each sowing, kept apart until the last count where counting is blind');
