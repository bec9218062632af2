import { addDays } from '../trial/text/add-days.ts';
import { addYears } from '../trial/text/add-years.ts';
import type { Trial } from '../trial/trial.ts';
import type { Due } from './due-next.ts';

/**
 * Every planned count and measurement of a trial that is planned or grows, counted from its day of sowing, and every planned
 * test of a storage series; whatever today is and whatever has been counted. In order of their dates.
 */
export function dueDates(trial: Trial): readonly Due[] {
  if (trial.status !== 'planned' && trial.status !== 'growing') return [];
  const tests = trial.storage?.tests ?? [];
  const started = trial.storage?.started ?? trial.sown;
  const retests =
    started === null ? [] : tests.map((at) => ({ date: addYears(started, at), what: 'test' as const, at }));
  return [...afterSowing(trial), ...retests].toSorted((a, b) => a.date.localeCompare(b.date) || a.at - b.at);
}

function afterSowing({ sown, outcomes, scoring }: Trial): Due[] {
  if (sown === null) return [];
  const days = (isTrait: boolean) =>
    outcomes
      .filter(({ measure }) => (measure === 'trait') === isTrait)
      .flatMap(({ day }) => (day === null ? [] : typeof day === 'number' ? [day] : Object.values(day)));
  const of = (what: 'count' | 'measure', all: readonly number[]) =>
    [...new Set(all)].map((at) => ({ date: addDays(sown, Math.ceil(at)), what, at }));
  return [...of('count', [...scoring.days, ...days(false)]), ...of('measure', days(true))];
}
