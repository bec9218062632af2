import type { BenchSession, BenchSowing, RecordedDay } from './bench.ts';
import { benchKey } from './bench-key.ts';
import { dayAt } from './day-at.ts';

/** Sowings that have neither a number nor NC on a day on which they could have; NC is an answer, silence is none. */
export function missedSowings({ trial, records }: BenchSession, picked: RecordedDay): BenchSowing[] {
  return trial.sowings.filter((sowing) => {
    const day = dayAt(sowing, picked, trial.sown);
    return day !== null && records.checks[benchKey(sowing.id, day)] === undefined;
  });
}
