import type { ReadRow } from '../csv/read-rows.ts';
import type { FileProblems } from '../file-problems.ts';
import type { Sowing } from '../trial.ts';
import { dayOf } from './day-of.ts';

export interface When {
  readonly day?: number | null | undefined;
  readonly date?: string | null | undefined;
}

/** The day of a row, from its day or its date; where it has both, they must agree. Null where reported. */
export function rowDay(row: ReadRow<When>, sowing: Sowing | null, report: FileProblems): number | null {
  const { day = null, date = null } = row.data ?? {};
  if (date === null) {
    if (day === null && row.data) {
      report.error(row.place(row.place('day').cell === null ? 'date' : 'day'), {
        rule: 'missing',
        message: 'is missing',
        remedy: 'Give the days since sowing, or a date in a column "date".',
      });
    }
    return day;
  }
  const counted = dayOf(date, sowing, report, row.place('date'));
  if (day !== null && counted !== null && Math.floor(day) !== counted) {
    report.error(row.place('day'), {
      rule: 'day-and-date-differ',
      message: `day ${day} and ${date} are not the same day: that date is day ${counted} of this sowing`,
      remedy: 'Correct the one that is off, or keep only one of the two columns.',
    });
  }
  return day ?? counted;
}
