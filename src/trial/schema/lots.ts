import * as z from 'zod';
import { idField } from './field/id-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';
import { yearField } from './field/year-field.ts';

const lot = z.strictObject({
  crop: textField().describe('Everyday name of the crop, such as leek'),
  species: textField().describe('Botanical name, such as Allium porrum'),
  cultivar: textField().optional().describe('Variety as named on the packet'),
  supplier: textField().optional().describe('Who sold, gave or saved the seed'),
  origin: textField().optional().describe('Country where the seed was grown'),
  seeds_per_gram: numberField({ what: 'seeds per gram', example: '380', min: 0.001 })
    .optional()
    .describe('Seeds in a gram, for sowings given by mass'),
  harvested: yearField().optional().describe('Year or date of harvest'),
  moisture: numberField({ what: 'a moisture content in %', example: '9.5', min: 0, max: 99.9 })
    .optional()
    .describe('Moisture content as measured or known before the trial, % of fresh mass'),
  accession: textField().optional().describe('Number in a collection'),
  storage: textField().optional().describe('How the seed was kept before the trial'),
  note: textField().optional().describe('Anything else worth knowing'),
});

/** lots.yaml: seed lot id -> its passport. */
export const lotsFile = z.record(idField(), lot).describe('Seed lots: id -> passport');
