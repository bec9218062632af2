import type { RetestPlan } from '../../analysis/storage/retest-plan.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { date } from './date.ts';
import { shareText } from './findings/share-text.ts';
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
    `nach ${storedText(years, 'dative')} Lagerung${on === null ? '' : `, am ${date(on)}`}`;
  const [next, ...later] = tests;
  if (next === undefined) return (storage?.tests.length ?? 0) > 0 ? ['Alle geplanten Prüfungen sind gesät.'] : [];
  const then = later.length === 0 ? '' : ` Dann ${list(later.map(at))}.`;
  return [`Nächste Prüfung: ${at(next)}.${then}`];
}

function whatIsLeft(trial: Trial, { left, tests }: RetestPlan): readonly string[] {
  if (left.length === 0) return [];
  const counts = left.map(({ treatment, left: many }) => `${label(trial, treatment)} ${many}`);
  const short = left.filter(({ left: many, opened }) => many < opened * tests.length);
  const enough = ({ treatment, left: many, opened }: RetestPlan['left'][number]) =>
    `${label(trial, treatment)} für ${many < opened ? 'keine' : Math.floor(many / opened)} wie die letzte, die ${opened} öffnete`;
  return [
    `Tüten oder Gläser übrig: ${list(counts)}.`,
    ...(short.length === 0
      ? []
      : [`Das reicht nicht für ${tests.length === 1 ? 'die nächste Prüfung' : `alle ${number(tests.length)} geplanten Prüfungen`}: ${short.map(enough).join('; ')}.`]),
  ]; // prettier-ignore
}

function levels(trial: Trial, { levels: all }: RetestPlan, regenerateBelow: number | null): readonly string[] {
  if (all.length === 0 || regenerateBelow === null) return [];
  const several = trial.lots.length > 1;
  const each = all.map(({ lot, treatment, stored, last, interval, level, side }) => {
    const of = `${several ? `${lotName(trial, lot)}, ` : ''}${label(trial, treatment)}`;
    const range = `${limit(interval.lower)} bis ${limit(interval.upper)}`;
    const stands = {
      above: 'darüber',
      below: 'darunter',
      unclear: 'zu nah, um zu sagen, auf welcher Seite',
    }[side];
    return `${of}: Die Grenze ist ${shareText({ estimate: level })}; nach ${storedText(stored, 'dative')} gingen ${shareText({ estimate: last })} auf (${range}), ${stands}.`;
  });
  const opening = `Diese Gruppe baut eine Partie neu an, sobald weniger als ${number(regenerateBelow)} % dessen aufgeht, was am Anfang aufging.`;
  return [opening, ...each];
}

const limit = (value: number | null): string => shareText({ estimate: value ?? 0 }).replace(' von 100', '');
