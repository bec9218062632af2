import type { Result } from '../analysis/analysis.ts';
import type { Sowing, Trial } from '../trial/trial.ts';

/** Seeds up at one check, of the seeds sown in the sowings that were checked. */
export interface Check {
  readonly day: number;
  readonly germinated: number;
  readonly seeds: number;
}

export interface Course {
  readonly treatment: string;
  /** All sowings that count, together; only days on which every one of them was checked. */
  readonly together: readonly Check[];
  readonly sowings: readonly {
    readonly sowing: Sowing;
    readonly leftOut: boolean;
    readonly checks: readonly Check[];
  }[];
}

/**
 * How the seeds of one lot came up, by treatment in the order of trial.yaml: each sowing's checks, and the pooled share of
 * seeds sown over the sowings that were not left out. A day on which some of those were not checked gives no pooled share:
 * another set of trays would make the curve jump or fall for no reason of the seed's. A sowing all of whose seeds are up needs
 * no further check.
 *
 * @param stored storage time of the test to draw, years; null for sowings outside a storage series
 */
export function germinationCourses(trial: Trial, result: Result, lot: string, stored: number | null = null): Course[] {
  const out = new Set(
    result.leftOut
      .filter(({ reason }) => reason === 'deviation' || reason === 'not-checked')
      .map(({ sowing }) => sowing),
  );
  return trial.treatments.flatMap(({ id }) => {
    const sowings = trial.sowings
      .filter((sowing) => sowing.lot === lot && sowing.treatment === id && sowing.stored === stored && sowing.seeds)
      .map((sowing) => ({ sowing, leftOut: out.has(sowing.id), checks: checksOf(trial, sowing) }));
    const together = pooled(sowings.filter(({ leftOut }) => !leftOut).map(({ checks }) => checks));
    return sowings.length ? [{ treatment: id, sowings, together }] : [];
  });
}

function checksOf(trial: Trial, { id, seeds }: Sowing): Check[] {
  return trial.counts
    .flatMap(({ sowing, day, germinated }) =>
      sowing === id && germinated !== null ? [{ day, germinated, seeds: seeds ?? 0 }] : [],
    )
    .sort((a, b) => a.day - b.day);
}

function pooled(courses: readonly (readonly Check[])[]): Check[] {
  const days = [...new Set(courses.flat().map(({ day }) => day))].sort((a, b) => a - b);
  return days.flatMap((day) => {
    const checks = courses.flatMap((course) => {
      const full = course.findLast((check) => check.day < day && check.germinated === check.seeds);
      return course.find((check) => check.day === day) ?? full ?? [];
    });
    if (checks.length < courses.length) return [];
    const sum = (of: (check: Check) => number) => checks.reduce((total, check) => total + of(check), 0);
    return [{ day, germinated: sum(({ germinated }) => germinated), seeds: sum(({ seeds }) => seeds) }];
  });
}

/** Every day on which some sowing was checked. */
export const checkDays = (courses: readonly Course[]): number[] =>
  [...new Set(courses.flatMap(({ sowings }) => sowings.flatMap(({ checks }) => checks.map(({ day }) => day))))].sort(
    (a, b) => a - b,
  );
