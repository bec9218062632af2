import type { Pooled } from '../../../analysis/pooled.ts';
import type { PooledFacts } from '../../pooled-facts.ts';
import { caveatName } from '../caveat-name.ts';
import { counted } from '../counted.ts';
import { crop } from '../crop.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { rangeText } from '../range-text.ts';
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
      ? 'The trials agree more closely than their own luck would have it; so the wider of two ranges is given.'
      : '',
    doubts(facts),
    answer.matters !== null && answer.interval !== null
      ? 'The smallest difference that matters was named for the question, not agreed before the trials were counted.'
      : '',
    crops.length > 1 ? `Different crops stand together here: ${list(crops.map(crop))}.` : '',
    days.length > 1
      ? `The trials were counted on different days, from day ${number(days[0] ?? 0)} to day ${number(days.at(-1) ?? 0)}.`
      : '',
    firstLotOnly > 0
      ? `${ofTrials(firstLotOnly, trials)} had several lots that could not be put together and ${firstLotOnly === 1 ? 'stands' : 'stand'} here with the first of them.`
      : '',
    elsewhere > 0
      ? `${ofTrials(elsewhere, trials)} ${elsewhere === 1 ? 'was' : 'were'} published on another site; the raw files were worked out again before ${elsewhere === 1 ? 'it' : 'they'} counted.`
      : '',
  ].filter((text) => text !== '');
}

function between(answer: Pooled, { between: how, prediction, trials }: PooledFacts): string {
  const { words } = tellingOf(answer);
  const where = prediction
    ? `in another garden the true difference may lie anywhere from ${rangeText(prediction.lower, prediction.upper, words)}`
    : '';
  switch (how) {
    case 'none':
      return `The trials differ no more than the luck of their own trays explains.${trials < MANY ? ' So few trials could hardly show that gardens differ.' : ''}`;
    case 'some':
      return `The trials differ somewhat more than the luck of their own trays explains, though luck could bring that about; ${where}.`;
    case 'clear':
      return `The trials differ more than the luck of their own trays explains; ${where}.`;
    case null:
      return '';
  }
}

function oneTray({ oneTray: single, trials, estimate }: PooledFacts): string {
  if (single === 0) return '';
  const alone = `${ofTrials(single, trials)} had one tray of a kind only. Alone such a trial cannot tell the treatment from the luck of that tray.`;
  return estimate === null
    ? `${alone} Repeated by others, it can help to answer.`
    : `${alone} Among trials by others that luck is part of what differs from trial to trial, so here it helps to answer; its seeds count as half as many.`;
}

function turning({ interval }: Pooled, { turning: those, trials }: PooledFacts): string {
  if (those === null || interval?.lower == null || interval.upper === null) return '';
  const leavesOutZero = interval.lower > 0 || interval.upper < 0;
  if (those.length === 0) {
    return leavesOutZero ? 'No single trial carries this: whichever is left out, the range stays off zero.' : '';
  }
  return leavesOutZero
    ? `This still leans on single trials. Leave one out, and in ${those.length} of ${trials} cases the range takes in zero.`
    : `Leave one out, and in ${those.length} of ${trials} cases the range comes off zero; luck has as much part in that as those trials.`;
}

function doubts({ doubtful, doubts: all, trials }: PooledFacts): string {
  if (doubtful === 0) return '';
  const named = all.map(({ id, trials: count }) => `${caveatName(id).toLowerCase()} (${count})`);
  return `${ofTrials(doubtful, trials)} ${doubtful === 1 ? 'has a doubt of its' : 'have doubts of their'} own, which more trials do not take away: ${list(named)}.`;
}

const ofTrials = (count: number, all: number): string =>
  count === all ? (all === 1 ? 'The trial' : `All ${counted(all, 'trial')}`) : `${count} of the ${all} trials`;
