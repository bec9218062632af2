import * as z from 'zod';
import { idField } from './field/id-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';
import { lotsFile } from './lots.ts';
import { peopleFile } from './people.ts';
import { trialFile } from './trial.ts';

const howMany = (what: string, example: string, max: number) =>
  numberField({ what, example, whole: true, min: 1, max });

/** What `plan` is told: the keys of trial.yaml that are known before sowing, and how much is to be sown. */
export const planRequest = trialFile
  .pick({
    title: true,
    question: true,
    authors: true,
    roles: true,
    varies: true,
    sown: true,
    licence: true,
    lots: true,
    treatments: true,
    sowing: true,
    scoring: true,
    outcomes: true,
    conditions: true,
    interests: true,
    involves: true,
    seedlings_eaten: true,
    seed_dressed: true,
    repeats: true,
  })
  .extend({
    trial: idField().describe('Id of the trial: the name of its folder and its address'),
    each: howMany('a whole number of sowings', '6', 50)
      .optional()
      .describe('Sowings of each treatment of each lot; proposed where not given'),
    seeds: howMany('a whole number of seeds', '25', 1000).optional().describe('Seeds in each sowing'),
    plants: howMany('a whole number of plants', '10', 100).optional().describe('Plants measured in each sowing'),
    base: numberField({ what: 'seeds of 100', example: '80', min: 1, max: 99 })
      .optional()
      .describe('Of 100 seeds of the control, about how many come up'),
    trays: z
      .enum(['even', 'usual', 'uneven'])
      .optional()
      .describe('How much sowings treated alike differ: even, usual (as where not given), uneven'),
    seed: textField().optional().describe('Seed of the random numbers of the layout, to draw a layout again'),
    new_lots: lotsFile.optional().describe('Seed lots that the site does not know: id -> passport, as in lots.yaml'),
    new_people: peopleFile.optional().describe('People whom the site does not know: id -> person, as in people.yaml'),
  })
  .describe('A trial that is to be planned');

/** A request as it was understood. */
export type PlanRequest = z.infer<typeof planRequest>;
