import * as z from 'zod';
import { dateField } from './field/date-field.ts';
import { digestField } from './field/digest-field.ts';
import { idField } from './field/id-field.ts';
import { nameField } from './field/name-field.ts';
import { textField } from './field/text-field.ts';
import { outcome, scoring, sowingPlan, treatment } from './parts.ts';

/** plan.yaml: the frozen copy, written by the tool when the plan is fixed. */
export const planFile = z
  .strictObject({
    fixed: dateField().describe('Date on which the plan was fixed'),
    digest: digestField().optional().describe('SHA-256 of everything else in this file as canonical JSON (RFC 8785)'),
    title: textField().optional().describe('As in trial.yaml'),
    question: textField().optional().describe('As in trial.yaml'),
    varies: textField().optional().describe('As in trial.yaml'),
    sown: dateField().optional().describe('As in trial.yaml'),
    lots: z.array(idField()).optional().describe('As in trial.yaml'),
    treatments: z.array(treatment).optional().describe('As in trial.yaml'),
    sowing: sowingPlan.optional().describe('As in trial.yaml'),
    scoring: scoring.optional().describe('As in trial.yaml'),
    outcomes: z.array(outcome).optional().describe('As in trial.yaml'),
    storage: z.record(z.string(), z.unknown()).optional().describe('As in trial.yaml'),
    sowings: z
      .array(z.object({ sowing: nameField().describe('Id of the sowing') }).catchall(z.string()))
      .optional()
      .describe('Rows of sowings.csv as planned; without treatment where the trial is blind'),
    seed: textField().optional().describe('Seed of the random numbers of the layout'),
    key_sha256: digestField().optional().describe('SHA-256 of key.csv, which is kept apart until the last count'),
  })
  .describe('The plan as it was fixed');
