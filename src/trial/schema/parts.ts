import * as z from 'zod';
import { idField } from './field/id-field.ts';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';
import { switchField } from './field/switch-field.ts';
import { textField } from './field/text-field.ts';
import { MEASURES } from './measures.ts';

/** Parts that trial.yaml and the frozen plan have in common. */

const day = () => numberField({ what: 'a day after sowing', example: '14', min: 0, max: 10_000 });

export const treatment = z.strictObject({
  id: idField().describe('Short id, used in the tables'),
  label: textField().optional().describe('Name as readers see it; the id where not given'),
  control: switchField().optional().describe('True for the one treatment that the others are compared with'),
  soak_hours: numberField({ what: 'hours of soak', example: '6', min: 0 })
    .optional()
    .describe('Hours of soak; where treatments differ in it, the report says so'),
  handling: textField().optional().describe('What this treatment, or the control, got instead'),
  temperature: numberField({ what: 'a temperature in °C', example: '4', min: -273, max: 150 })
    .optional()
    .describe('Storage temperature, °C'),
  moisture: numberField({ what: 'a moisture content in %', example: '6.5', min: 0, max: 99.9 })
    .optional()
    .describe('Moisture in storage, % of fresh mass'),
});

export const sowingPlan = z.strictObject({
  container: textField().optional().describe('What one sowing physically is: a 40-cell tray'),
  assignment: z
    .enum(['random', 'random-in-blocks', 'alternating', 'by-hand', 'unknown'])
    .optional()
    .describe('How sowings were assigned to treatments and places; unknown where not given'),
  treated: z
    .enum(['each-sowing', 'in-batches', 'at-once', 'unknown'])
    .optional()
    .describe('How the treatments other than the control were given; unknown where not given'),
  block: textField().optional().describe('What a block is: shelf, bench end, day'),
});

export const scoring = z.strictObject({
  germinated: textField().optional().describe('When a seed counts as germinated'),
  blind: z
    .enum(['yes', 'no', 'unknown', 'true', 'false'])
    .transform((word) => (word === 'true' ? 'yes' : word === 'false' ? 'no' : word))
    .meta({ type: ['string', 'boolean'], enum: ['yes', 'no', 'unknown', true, false] })
    .optional()
    .describe('Whether whoever counted did not know which was which; unknown where not given'),
  days: z.array(day()).optional().describe('Planned count days'),
  counts: z
    .enum(['cumulative', 'new'])
    .optional()
    .describe('cumulative (as where not given): totals so far; new: those since the last check'),
});

export const outcome = z.strictObject({
  id: idField().describe('Short id'),
  measure: z.enum(MEASURES).describe('What is compared'),
  column: nameField().optional().describe('Heading in measurements.csv without its unit; measure trait only'),
  day: z
    .union([day(), z.record(idField(), day())])
    .optional()
    .describe('Day on which it is compared: one, or a day by lot id'),
  matters: numberField({ what: 'a smallest difference that matters', example: '10', min: 0 })
    .optional()
    .describe('Smallest difference that would matter, in the unit of the outcome'),
  primary: switchField().optional().describe('True for the outcome that answers the question'),
  pool: switchField().optional().describe('True where lots of different crops may be pooled'),
});
