import * as z from 'zod';
import { dateField } from './field/date-field.ts';
import { doiField } from './field/doi-field.ts';
import { idField } from './field/id-field.ts';
import { licenceField } from './field/licence-field.ts';
import { linkField } from './field/link-field.ts';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';
import { switchField } from './field/switch-field.ts';
import { textField } from './field/text-field.ts';
import { outcome, scoring, sowingPlan, treatment } from './parts.ts';

const day = numberField({ what: 'a day after sowing', example: '6', min: 0, max: 10_000 });
const years = numberField({ what: 'years of storage', example: '5', min: 0, max: 1000 });

const deviation = z.strictObject({
  day: day.optional().describe('Day after sowing'),
  date: dateField().optional().describe('Date, in place of day'),
  sowings: z.array(nameField()).optional().describe('Sowings it touched, by id or label; all where not given'),
  what: textField().describe('What happened'),
  action: z.enum(['left-out', 'kept']).describe('Whether these sowings are left out of the comparison'),
});

const event = z.strictObject({
  day: day.optional().describe('Day after sowing'),
  date: dateField().optional().describe('Date, in place of day'),
  sowings: z.array(nameField()).optional().describe('Sowings it touched, by id or label; all where not given'),
  what: textField().describe('What was done'),
});

const change = z.strictObject({
  date: dateField().describe('When the published report was changed'),
  what: textField().describe('What was changed'),
  why: textField().optional().describe('Why'),
});

const storage = z.strictObject({
  started: dateField().optional().describe('Date on which storage began'),
  tests: z.array(years).optional().describe('Planned test times, years'),
  left: z
    .record(idField(), numberField({ what: 'containers left', example: '6', whole: true, min: 0 }))
    .optional()
    .describe('Containers left of each treatment'),
});

/** trial.yaml: what was asked, planned and done. */
export const trialFile = z
  .strictObject({
    title: textField().describe('Short title'),
    question: textField().describe('The question in one sentence'),
    status: z.enum(['planned', 'growing', 'finished', 'abandoned']).describe('How far the trial is'),
    authors: z.array(idField()).min(1).max(1000).describe('Ids of people.yaml, in order of printing'),
    varies: z
      .enum(['soak', 'drying', 'storage', 'light', 'temperature', 'medium', 'dressing', 'age', 'other'])
      .optional()
      .describe('What the question changes on purpose'),
    sown: dateField().optional().describe('Day 0; may be missing only while planned'),
    finished: dateField().optional().describe('Date of the last record'),
    licence: licenceField().optional().describe('SPDX id; that of site.yaml where not given'),
    lots: z.array(idField()).min(1).max(1000).describe('Ids of lots.yaml'),
    treatments: z.array(treatment).min(1).max(1000).describe('What was done or not done; one is the control'),
    sowing: sowingPlan.optional().describe('How sowings were made and placed'),
    scoring: scoring.optional().describe('How and when was counted'),
    outcomes: z.array(outcome).max(1000).optional().describe('What is compared, in order'),
    fixed_beforehand: dateField()
      .optional()
      .describe('Date on which outcomes were fixed, as stated by the authors, where there is no plan.yaml'),
    conditions: z
      .record(z.string().min(1).max(100), textField())
      .optional()
      .describe('Substrate, water, light, temperature, place …: free text each'),
    interests: textField().optional().describe('Who paid, who gains; asked for on every trial'),
    impression: z
      .union([textField(), z.record(idField(), textField())])
      .optional()
      .describe("The grower's impression, shown beside the counts: one text, or a text by lot id"),
    involves: z
      .array(
        z.enum([
          'hot-water',
          'disinfectant',
          'acid',
          'desiccant',
          'oxygen-absorber',
          'freezer',
          'dry-ice',
          'oven',
          'heat-mat',
          'mould',
          'seed-offered',
        ]),
      )
      .optional()
      .describe('Hazards met; each brings its notice'),
    seedlings_eaten: switchField().optional().describe('Seedlings were eaten; brings the food-safety notice'),
    seed_dressed: switchField().optional().describe('Seed was treated with a pesticide; brings that notice'),
    deviations: z.array(deviation).optional().describe('Mishaps, and whether the sowings were left out'),
    events: z.array(event).optional().describe('Care that touched some sowings only'),
    summary: textField().optional().describe("The authors' own lines for lists"),
    doi: doiField().optional().describe('DOI of the published report'),
    repeats: linkField().optional().describe('Address of the trial that this one repeats'),
    aliases: z.array(idField()).optional().describe('Old ids, which lead to this one'),
    changes: z.array(change).optional().describe('History of the published report'),
    roles: z
      .record(idField(), z.array(textField()))
      .optional()
      .describe('Person id -> what they did: planned, sowed, counted …'),
    storage: storage.optional().describe('A storage series: start, planned tests, what is left'),
  })
  .describe('One trial: what was asked, planned and done');
