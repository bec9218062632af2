import type { Trial } from '../trial/trial.ts';
import type { Analysis, Group, Result } from './analysis.ts';

/** How much of a lot came up in one test: one group of one trial. */
export interface LotTest {
  readonly trial: Trial;
  readonly result: Result;
  readonly group: Group;
  /** Day 0 of the sowings of that group, the earliest where there were several. */
  readonly date: string;
  /** Day of the count. */
  readonly day: number;
}

/**
 * Every germination test of a lot in analysed trials, by date, then trial, then in the order of the analysis. The first
 * germination outcome of a trial counts, the primary one before others; a trial that still grows has none.
 */
export function lotTests(
  lot: string,
  analysed: readonly { readonly trial: Trial; readonly analysis: Analysis }[],
): readonly LotTest[] {
  return analysed
    .flatMap(({ trial, analysis }) => {
      const counted = analysis.results.filter(({ measure }) => measure === 'germination');
      const result = counted.find(({ primary }) => primary) ?? counted[0];
      if (!result) return [];
      const groups = result.groups.filter((group) => group.lot === lot && group.estimate !== null);
      return groups.flatMap((group) => {
        const date = dateOf(trial, group);
        const day = result.days[lot];
        return date === null || day === undefined ? [] : [{ trial, result, group, date, day }];
      });
    })
    .sort((a, b) => compare(a.date, b.date) || compare(a.trial.id, b.trial.id));
}

function dateOf(trial: Trial, { lot, treatment, stored }: Group): string | null {
  const dates = trial.sowings
    .filter((sowing) => sowing.lot === lot && sowing.stored === stored)
    .filter((sowing) => sowing.treatment === treatment || (stored === 0 && sowing.treatment === null))
    .flatMap(({ sown }) => sown ?? []);
  return dates.sort(compare)[0] ?? trial.sown;
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
