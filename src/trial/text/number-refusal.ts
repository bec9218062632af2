import type { Refusal } from '../refusal.ts';
import { shown } from './shown.ts';

export interface NumberKind {
  /** "a whole number of seeds", "a length in cm": what belongs here. */
  readonly what: string;
  readonly example: string;
  readonly whole?: boolean;
  /** Smallest value allowed. */
  readonly min?: number;
  readonly max?: number;
  /** Where a date belongs that was written here, as a remedy. */
  readonly forDates?: string;
}

/** Each habit of writing numbers that cannot be read as one number: rule, pattern, why, how to mend it. */
const HABITS: readonly (readonly [rule: string, pattern: RegExp, why: string, remedy: string])[] = [
  [
    'date-in-number',
    /^\d{1,4}[/.-]\d{1,2}[/.-]\d{1,4}$/,
    ', a date; spreadsheets turn cells such as 3-4 into dates',
    'Type the number again and format the cell as a number.',
  ],
  [
    'range-for-number',
    /^[\d.,]+ ?(-|–|—|\.\.|to|bis|or) ?[\d.,]+$/i,
    ', a range',
    'Write the one number that was counted or read; put the doubt into a note.',
  ],
  [
    'about-a-number',
    /^([~≈<>≤≥±]|(ca|circa|about|approx)\b)|[+?]$/i,
    ', which leaves the number open',
    'Write the number that was counted or read; put the doubt into a note.',
  ],
  ['percentage', /^-?[\d.,]+ ?%$/, ', a percentage', 'Write the number itself, without a percent sign.'],
  [
    'comma-in-number',
    /^-?\d*,\d+$/,
    ', where the comma could mark decimals or thousands',
    'Write decimals with a point, such as 4.2, and no mark for thousands.',
  ],
  [
    'marks-in-number',
    /^-?\d{1,3}([ '’.,]\d{3})+([.,]\d+)?$/,
    ', with marks or blanks between its digits',
    'Write the digits without marks for thousands.',
  ],
  [
    'unit-in-cell',
    /^-?[\d.,]+ ?[^\d\s.,+-].*$/,
    ', a number with something behind it',
    'Leave only the number in the cell; a unit belongs in the heading, such as "height (cm)".',
  ],
];

/** Why this text is not a number of the kind that belongs here, or null where it is one. Decimals by point. */
export function numberRefusal(text: string, { what, example, whole, min, max, forDates }: NumberKind): Refusal | null {
  const refuse = (rule: string, why: string, remedy: string): Refusal => ({
    rule,
    message: `expected ${what}, such as ${example}; found ${shown(text)}${why}`,
    remedy,
  });

  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text) || text.length > 30) {
    const [rule, , why, remedy] = HABITS.find(([, pattern]) => pattern.test(text)) ?? [
      'not-a-number',
      '',
      '',
      'Write digits only.',
    ];
    const isDay = rule === 'date-in-number' && forDates !== undefined;
    return isDay ? refuse(rule, ', a date', forDates) : refuse(rule, why, remedy);
  }
  const value = Number(text);
  if (min !== undefined && value < min) {
    if (value < 0) return refuse('negative', ', which is below zero', 'Look the number up; take the minus sign out.');
    return refuse('too-small', `, which is below ${min}`, 'Look the number up.');
  }
  if (max !== undefined && value > max) return refuse('too-large', `, which is above ${max}`, 'Look the number up.');
  if (whole && !Number.isInteger(value)) {
    return refuse('not-whole', ', which is not whole', 'Look the number up; there are no parts of these.');
  }
  return null;
}
