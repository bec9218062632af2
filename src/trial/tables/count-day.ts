import type { Heading } from '../csv/table.ts';
import type { FileProblems } from '../file-problems.ts';
import { dateRefusal } from '../text/date-refusal.ts';
import { shown } from '../text/shown.ts';

/** When a column of the wide layout was counted: a day after sowing or a date. */
export type CountDay = { readonly day: number } | { readonly date: string };

/** The count day of a heading, or null where it is not well written, which is reported. */
export function countDay(heading: Heading, decimalComma: boolean, report: FileProblems): CountDay | null {
  const text = decimalComma ? heading.name.replace(/,(?=\d+$)/, '.') : heading.name;
  const [, day] = /^day ?(\d+(?:\.\d+)?)$/.exec(text) ?? [];
  if (day !== undefined && Number(day) <= 10_000) return { day: Number(day) };
  if (/^\d+[-/.]\d+[-/.]\d+/.test(text)) {
    const refusal = dateRefusal(text);
    if (refusal === null) return { date: text };
    report.error(heading.place, refusal);
    return null;
  }
  const number = /\d+(\.\d+)?/.exec(text)?.[0] ?? '3';
  report.error(heading.place, {
    rule: 'day-heading',
    message: `expected a count day such as "day 3" or a date such as 2026-04-07; found ${shown(heading.label)}`,
    remedy: `Write "day ${number}" if that is the number of days after sowing.`,
  });
  return null;
}
