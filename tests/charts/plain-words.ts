import { list } from '../../src/wording/en/list.ts';
import { lotName } from '../../src/wording/en/lot-name.ts';
import { number } from '../../src/wording/en/number.ts';
import { quantity } from '../../src/wording/en/quantity.ts';
import { ui } from '../../src/wording/en/ui.ts';
import type { Trial } from '../../src/trial/trial.ts';
import type { Words } from '../../src/wording/words.ts';

const labelOf = ({ treatments }: Trial, id: string) => treatments.find((treatment) => treatment.id === id)?.label ?? id;
const signed = (value: number | null) => (value === null ? '?' : `${value > 0 ? '+' : ''}${number(value, 1)}`);

/** The words that charts use: the project's own labels, with plain stand-ins for sentences, so that charts are tested alone. */
const parts: Partial<Words> = {
  language: 'en',
  ui,
  number,
  list,
  lotName,
  quantity,
  unitName: (unit) => unit,
  say: (key, values) =>
    ui[key].replace(/\{(\w+)\}/g, (_, name: string) => {
      if (values[name] === undefined) throw new RangeError(`${key} needs ${name}`);
      return String(values[name]);
    }),
  counted: (count, thing) => `${count} ${thing}${count === 1 ? '' : 's'}`,
  treatmentLabel: labelOf,
  unitWord: () => 'tray',
  units: (_, { units }) => (units === 1 ? '1 tray' : `${units} trays`),
  outcomeTitle: (_, { measure, outcome, day }) =>
    measure === 'germination' ? `Came up by day ${day}` : `${outcome}, day ${day}`,
  comparisonName: (trial, { treatment, control }) => `${labelOf(trial, treatment)} against ${labelOf(trial, control)}`,
  difference: (value, { unit }) => `${signed(value)} ${unit === '%' ? 'per 100' : unit}`,
  range: (lower, upper) => `${signed(lower)} to ${signed(upper)}`,
  headline: (trial, _, __, { treatment, estimate, interval }) =>
    `${labelOf(trial, treatment)}: ${signed(estimate)} (${signed(interval?.lower ?? null)} to ${signed(interval?.upper ?? null)})`,
  groupSentence: (trial, { unit }, { treatment, estimate, seeds }) =>
    `${labelOf(trial, treatment)}: ${quantity(estimate, unit, seeds)}`,
  verdict: (_, { verdict }) => ({ words: verdict, shape: 'open' }),
};
export const words = parts as Words;
