import * as z from 'zod';
import { idField } from './field/id-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';
import { MEASURES } from './measures.ts';

const trial = z.strictObject({
  trial: idField().describe('Id of the trial, or name of its zip under repeats/ without .zip'),
  outcome: idField().optional().describe('Its outcome, where the measure alone does not tell'),
  lot: idField().optional().describe('Its lot, where there are several'),
  treatment: idField().optional().describe('Its treatment, where ids differ between trials'),
  control: idField().optional().describe('Its control, where ids differ between trials'),
});

const question = z.strictObject({
  title: textField().describe('Short title'),
  question: textField().describe('The question in one sentence'),
  measure: z.enum(MEASURES).describe('What is compared'),
  matters: numberField({ what: 'a smallest difference that matters', example: '10', min: 0 })
    .optional()
    .describe('Smallest difference that would matter, in the unit of the measure'),
  trials: z
    .array(z.union([idField(), trial]))
    .describe(
      'Trials that answer it: ids, for a trial of another site the name of its zip under repeats/ without .zip, or { trial, outcome, lot, treatment, control }',
    ),
});

/** questions.yaml: question id -> a question that several trials answer. */
export const questionsFile = z.record(idField(), question).describe('Questions that several trials answer');
