import type { RetestPlan } from '../../analysis/storage/retest-plan.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { date } from './date.ts';
import { shareText } from './findings/share-text.ts';
import { labelled } from './labelled.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { storedText } from './stored-text.ts';

/** When stored seed is tested again, what is left for it, and how the last test stands to the level that the group set. */
export function retest(trial: Trial, plan: RetestPlan, regenerateBelow: number | null): readonly string[] {
  return [...nextTests(trial, plan), ...whatIsLeft(trial, plan), ...levels(trial, plan, regenerateBelow)];
}

function nextTests({ storage }: Trial, { tests }: RetestPlan): readonly string[] {
  const at = ({ years, date: on }: RetestPlan['tests'][number]) =>
    `after ${storedText(years)} of storage${on === null ? '' : `, on ${date(on)}`}`;
  const [next, ...later] = tests;
  if (next === undefined) return (storage?.tests.length ?? 0) > 0 ? ['All tests that were planned are sown.'] : [];
  const then = later.length === 0 ? '' : ` Then ${list(later.map(at))}.`;
  return [`Next test: ${at(next)}.${then}`];
}

function whatIsLeft(trial: Trial, { left, tests }: RetestPlan): readonly string[] {
  if (left.length === 0) return [];
  const counts = left.map(({ treatment, left: number }) => `${label(trial, treatment)} ${number}`);
  const short = left.filter(({ left: number, opened }) => number < opened * tests.length);
  const enough = ({ treatment, left: number, opened }: RetestPlan['left'][number]) =>
    `${label(trial, treatment)} for ${number < opened ? 'none' : Math.floor(number / opened)} like the last, which opened ${opened}`;
  return [
    `Packets or jars left: ${list(counts)}.`,
    ...(short.length === 0
      ? []
      : [`That is not enough for ${tests.length === 1 ? 'the next test' : `all ${number(tests.length)} tests planned`}: ${short.map(enough).join('; ')}.`]),
  ]; // prettier-ignore
}

function levels(trial: Trial, { levels: all }: RetestPlan, regenerateBelow: number | null): readonly string[] {
  if (all.length === 0 || regenerateBelow === null) return [];
  const several = trial.lots.length > 1;
  const each = all.map(({ lot, treatment, stored, last, interval, level, side }) => {
    const of = `${several ? `${lotName(trial, lot)}, ` : ''}${labelled(trial, treatment, 'seed')}`;
    const range = `${limit(interval.lower)} to ${limit(interval.upper)}`;
    const stands = {
      above: 'above it',
      below: 'below it',
      unclear: 'too near to tell on which side',
    }[side];
    return `${of}: the level is ${shareText({ estimate: level })}; after ${storedText(stored)} ${shareText({ estimate: last })} came up (${range}), ${stands}.`;
  });
  const opening = `This group grows a lot anew once less than ${number(regenerateBelow)} % of what came up at the start still does.`;
  return [opening, ...each];
}

const limit = (value: number | null): string => shareText({ estimate: value ?? 0 }).replace(' of 100', '');
