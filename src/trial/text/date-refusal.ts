import type { Refusal } from '../refusal.ts';
import { shown } from './shown.ts';

const MONTHS = 'January February March April May June July August September October November December'.split(' ');
const REMEDY = 'Write dates as year-month-day, such as 2026-04-03.';

/**
 * Why this is not a date, or null where it is one. Only ISO dates are read: 3/4/26 is April to one reader
 * and March to another.
 */
export function dateRefusal(text: string): Refusal | null {
  const refuse = (why: string, remedy = REMEDY, rule = 'not-a-date'): Refusal => ({
    rule,
    message: `expected a date such as 2026-04-03; found ${shown(text)}${why}`,
    remedy,
  });

  const [, year = '', month = '', day = ''] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year !== '') {
    const days = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
    const name = MONTHS[Number(month) - 1];
    if (name === undefined) return refuse(', and there is no such month', REMEDY, 'impossible-date');
    if (Number(day) < 1 || Number(day) > days) {
      return refuse(`, and ${name} ${year} has ${days} days`, 'Look the date up; one digit is off.', 'impossible-date');
    }
    const likely = Number(year) >= 1800 && Number(year) <= 2200;
    return likely ? null : refuse(', a year far from ours', 'Look the year up; one digit is off.', 'impossible-date');
  }

  const [, first = '', second = '', last = ''] = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})$/.exec(text) ?? [];
  if (first !== '') return refuse(...ambiguous(Number(first), Number(second), last), 'ambiguous-date');
  if (/^\d{5}(\.\d+)?$/.test(text)) {
    return refuse(", which looks like a spreadsheet's inner number of a day", `Format the column as text. ${REMEDY}`);
  }
  return refuse('');
}

function ambiguous(first: number, second: number, year: string): [why: string, remedy: string] {
  const full = year.length === 2 ? `20${year}` : year;
  const iso = (month: number, day: number) =>
    `${full}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const dayFirst = second >= 1 && second <= 12 ? iso(second, first) : null;
  const monthFirst = first >= 1 && first <= 12 ? iso(first, second) : null;
  if (dayFirst !== null && monthFirst !== null && first !== second) {
    return [
      `, which is ${first} ${MONTHS[second - 1]} to one reader and ${second} ${MONTHS[first - 1]} to another`,
      `Write ${dayFirst} or ${monthFirst}, whichever you mean.`,
    ];
  }
  const only = dayFirst ?? monthFirst;
  return ['', only === null || dateRefusal(only) !== null ? REMEDY : `Write ${only}.`];
}
