import { addDays } from '../trial/text/add-days.ts';
import { daysBetween } from '../trial/text/days-between.ts';
import type { Sowing, Trial } from '../trial/trial.ts';

/** What a trial waits for next, and when: by its own dates and plan, whatever today is. */
export interface Due {
  /** ISO date. */
  readonly date: string;
  readonly what: 'count' | 'measure' | 'test';
  /** Day since sowing of a count or measurement; years of storage of a test. */
  readonly at: number;
}

/** Days of a year of storage, as the data format counts it. */
const DAYS_A_YEAR = 365.25;

/**
 * The first planned count, measurement or storage test of a growing trial that has no record yet; null where the plan
 * names none, or the trial does not grow. A day passes as counted when any sowing of the latest test was counted on it or
 * later: a missed check is not due for ever.
 */
export function dueNext(trial: Trial): Due | null {
  if (trial.status !== 'growing') return null;
  const sown = latest(trial.sowings.flatMap((sowing) => sowing.sown ?? [])) ?? trial.sown;
  if (sown === null) return null;
  const current = trial.sowings.filter((sowing) => (sowing.sown ?? trial.sown) === sown);
  return dueAfterSowing(trial, current, sown) ?? dueTest(trial, current);
}

function dueAfterSowing(trial: Trial, current: readonly Sowing[], sown: string): Due | null {
  const ids = new Set(current.map(({ id }) => id));
  const last = (rows: readonly { sowing: string; day: number }[]) =>
    Math.max(-1, ...rows.filter(({ sowing }) => ids.has(sowing)).map(({ day }) => day));
  const counted = last(trial.counts.filter(({ germinated }) => germinated !== null));
  const measured = last(trial.measurements);
  const [traits, others] = [true, false].map((isTrait) =>
    trial.outcomes.filter(({ measure }) => (measure === 'trait') === isTrait).flatMap(({ day }) => daysOf(day)),
  ) as [number[], number[]];
  const counts = [...trial.scoring.days, ...others].filter((day) => day > counted);
  const measures = traits.filter((day) => day > measured);
  const [first] = [
    ...counts.map((at) => ({ what: 'count' as const, at })),
    ...measures.map((at) => ({ what: 'measure' as const, at })),
  ].sort((a, b) => a.at - b.at);
  return first ? { date: addDays(sown, Math.ceil(first.at)), ...first } : null;
}

function dueTest({ storage, sown }: Trial, current: readonly Sowing[]): Due | null {
  const started = storage?.started ?? sown;
  if (!storage || started === null) return null;
  const done = Math.max(-1, ...current.flatMap(({ stored }) => stored ?? []));
  const [at] = storage.tests.filter((years) => years > done + 0.02).sort((a, b) => a - b); // a week early is that test
  return at === undefined ? null : { date: addDays(started, Math.round(at * DAYS_A_YEAR)), what: 'test', at };
}

function daysOf(day: Trial['outcomes'][number]['day']): readonly number[] {
  if (day === null) return [];
  return typeof day === 'number' ? [day] : Object.values(day);
}

const latest = (dates: readonly string[]): string | null =>
  dates.reduce<string | null>((last, date) => (last === null || daysBetween(last, date) > 0 ? date : last), null);
