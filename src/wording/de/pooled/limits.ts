import type { Pooled } from '../../../analysis/pooled.ts';
import type { PooledFacts } from '../../pooled-facts.ts';
import { caveatName } from '../caveat-name.ts';
import { crop } from '../crop.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { anywhereText } from './anywhere-text.ts';
import { tellingOf } from './telling.ts';

/** From so many trials on, trials that do not differ say something about gardens. */
const MANY = 10;

/** What limits a pooled answer, and what it rests on, a sentence or two each. */
export function pooledLimits(answer: Pooled, facts: PooledFacts): readonly string[] {
  const { trials, crops, days, elsewhere, firstLotOnly } = facts;
  return [
    between(answer, facts),
    oneTray(facts),
    turning(answer, facts),
    answer.guarded && facts.between === 'none'
      ? 'Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.'
      : '',
    doubts(facts),
    answer.matters !== null && answer.interval !== null
      ? 'Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden.'
      : '',
    crops.length > 1 ? `Hier stehen verschiedene Kulturen zusammen: ${list(crops.map(crop))}.` : '',
    days.length > 1
      ? `Gezählt wurde an verschiedenen Tagen, von Tag ${number(days[0] ?? 0)} bis Tag ${number(days.at(-1) ?? 0)}.`
      : '',
    firstLotOnly > 0
      ? `${ofTrials(firstLotOnly, trials)} ${hadOrHave(firstLotOnly)} mehrere Partien, die sich nicht zusammenfassen ließen; hier steht jeweils die erste.`
      : '',
    elsewhere > 0
      ? `${ofTrials(elsewhere, trials)} ${elsewhere === 1 ? 'ist' : 'sind'} auf einer anderen Site erschienen; die Rohdaten wurden nachgerechnet, bevor sie zählten.`
      : '',
  ].filter((text) => text !== '');
}

function between(answer: Pooled, { between: how, prediction, trials }: PooledFacts): string {
  const { words } = tellingOf(answer);
  const where = prediction
    ? `in einem anderen Garten kann der wahre Unterschied ${anywhereText(prediction, words)} liegen`
    : '';
  switch (how) {
    case 'none':
      return `Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt.${trials < MANY ? ' So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.' : ''}`;
    case 'some':
      return `Die Versuche unterscheiden sich etwas mehr, als der Zufall ihrer eigenen Schalen erklärt, doch auch das kann Zufall sein; ${where}.`;
    case 'clear':
      return `Die Versuche unterscheiden sich mehr, als der Zufall ihrer eigenen Schalen erklärt; ${where}.`;
    case null:
      return '';
  }
}

function oneTray({ oneTray: single, trials, estimate }: PooledFacts): string {
  if (single === 0) return '';
  const alone = `${ofTrials(single, trials)} ${hadOrHave(single)} von einer Behandlung nur eine Schale. Allein kann ein solcher Versuch die Behandlung nicht vom Zufall dieser Schale trennen.`;
  return estimate === null
    ? `${alone} Von anderen wiederholt, kann er zur Antwort beitragen.`
    : `${alone} Unter Versuchen anderer gehört dieser Zufall zu dem, was sich von Versuch zu Versuch unterscheidet; darum hilft er hier zu antworten, und seine Samen zählen halb.`;
}

function turning({ interval }: Pooled, { turning: those, trials }: PooledFacts): string {
  if (those === null || interval?.lower == null || interval.upper === null) return '';
  const leavesOutZero = interval.lower > 0 || interval.upper < 0;
  if (those.length === 0) {
    return leavesOutZero
      ? 'Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.'
      : '';
  }
  return leavesOutZero
    ? `Das hängt noch an einzelnen Versuchen. Lässt man einen weg, schließt der Bereich in ${those.length} von ${trials} Fällen die Null ein.`
    : `Lässt man einen weg, lässt der Bereich in ${those.length} von ${trials} Fällen die Null aus; daran hat der Zufall so viel Anteil wie diese Versuche.`;
}

function doubts({ doubtful, doubts: all, trials }: PooledFacts): string {
  if (doubtful === 0) return '';
  const named = all.map(({ id, trials: count }) => `${caveatName(id)} (${count})`);
  return `${ofTrials(doubtful, trials)} ${hadOrHave(doubtful)} eigene Vorbehalte, die weitere Versuche nicht beheben: ${list(named)}.`;
}

const hadOrHave = (count: number): string => (count === 1 ? 'hat' : 'haben');
const ofTrials = (count: number, all: number): string =>
  count === all ? (all === 1 ? 'Der Versuch' : `Alle ${all} Versuche`) : `${count} der ${all} Versuche`;
