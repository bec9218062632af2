import * as z from 'zod';
import { massInGrams, seedNumber } from './columns.ts';
import { dateField } from './field/date-field.ts';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';

/** A row of sowings.csv: one sowing. */
export const sowingsRow = z
  .strictObject({
    sowing: nameField().describe('Id of the sowing: one container or row sown at one time'),
    lot: nameField().describe('Seed lot, an id of trial.yaml'),
    treatment: nameField().nullish().describe('Treatment, an id of trial.yaml; may stand in key.csv instead'),
    seeds: seedNumber(1).nullish().describe('Seeds sown; may be empty where mass is given'),
    batch: nameField().nullish().describe('What was treated or stored separately: the cup, the jar'),
    tray: nameField().nullish().describe('Tray or dish, where several sowings share one'),
    block: nameField().nullish().describe('Place or day shared with other sowings'),
    position: nameField().nullish().describe('Place: free text, or row-column such as 2-3'),
    label: nameField().nullish().describe('Blind code written on the container'),
    sown: dateField().nullish().describe("This sowing's own day 0, where it differs from the trial's"),
    stored: numberField({ what: 'a storage time', example: '2', min: 0 })
      .nullish()
      .describe('Storage time when sown; unit in brackets'),
    mass: massInGrams().nullish().describe('Mass of the seed sown; unit in brackets'),
    soak: numberField({ what: 'hours of soak', example: '6', min: 0 })
      .nullish()
      .describe("Soak of this sowing; overrides its treatment's"),
  })
  .describe('Which container got which seed and treatment: a row each');
