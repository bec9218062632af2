import * as z from 'zod';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';

const caption = z.strictObject({
  caption: textField().optional().describe('Line below the picture'),
  alt: textField().optional().describe('What the picture shows, for those who cannot see it'),
  sowing: nameField().optional().describe('Sowing shown, by id or label'),
  day: numberField({ what: 'a day after sowing', example: '8', min: 0, max: 10_000 })
    .optional()
    .describe('Day on which it was taken'),
});

/** photos/captions.yaml: file name -> what it shows. */
export const captionsFile = z.record(z.string(), caption).describe('Pictures: file name -> what it shows');
