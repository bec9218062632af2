import { dateField } from './field/date-field.ts';
import { nameField } from './field/name-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';

/*
 * Columns that several tables share. Cells arrive as text, so code 007 stays 007; null is a cell without a
 * value, an absent key a column that the file does not have.
 */

export const seedNumber = (min: number) =>
  numberField({ what: 'a whole number of seeds', example: '12', whole: true, min });

export const massInGrams = () => numberField({ what: 'a mass', example: '1.5', min: 0 });

export const sowingName = () => nameField().describe('Id or label of the sowing');

const DATES = 'Give dates in a column "date", such as 2026-04-12, or the days since sowing here.';

export const when = {
  day: numberField({ what: 'a day after sowing', example: '8', min: 0, max: 10_000, forDates: DATES })
    .nullish()
    .describe('Days since sowing; or give date'),
  date: dateField().nullish().describe('Date, in place of day'),
};

export const categories = {
  abnormal: seedNumber(0).nullish().describe('Abnormal seedlings so far'),
  hard: seedNumber(0).nullish().describe('Hard seeds as of that day'),
  fresh: seedNumber(0).nullish().describe('Fresh ungerminated seeds as of that day'),
  dead: seedNumber(0).nullish().describe('Dead seeds so far'),
};

export const note = () => textField().nullish().describe('Anything seen');

export const scorer = () => nameField().nullish().describe('Who counted');
