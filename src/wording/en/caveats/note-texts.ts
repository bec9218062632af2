import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { Trial } from '../../../trial/trial.ts';
import { amount } from '../../amount.ts';
import { differenceWords } from '../difference-words.ts';
import { differenceText } from '../difference-text.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { sentence } from '../sentence.ts';
import type { CaveatText, Telling } from './telling.ts';

/** Trays of a kind differ beyond seed luck: what to look for, and where. */
export function moreVaried({ ranges }: Evidence['more-varied-than-luck'], { trays, tray }: Telling): CaveatText {
  const shown = ranges.map(
    ({ treatment, lowest, highest, limit }) =>
      `${trays(treatment)} from ${number(Math.round(lowest))} to ${number(Math.round(highest))} of 100, where luck alone seldom gives a gap above ${number(Math.floor(limit))}`,
  );
  return {
    reason: `${tray(2)} of a kind differ more than seed luck explains`,
    sentence: `${sentence(tray(2))} of a kind differ more than seed luck explains${shown.length === 0 ? '' : ` (${list(shown)})`}: look for a mix-up, mould, an edge. The range given allows for it.`,
  };
}

/** The lots do not agree about the difference. */
export function lotsDiffer({ estimates, unit }: Evidence['lots-differ'], { lot }: Telling): CaveatText {
  const words = differenceWords(unit === 'percentage points' ? 'germination' : 'trait', null, unit);
  const each = estimates.map(
    ({ lot: id, estimate }) =>
      `${lot(id)} ${differenceText(amount(estimate, unit === 'percentage points' ? 0 : 1), { ...words, after: '' })}`,
  );
  return {
    reason: 'the lots do not agree',
    sentence: `The lots do not agree (${list(each)}). One figure for all of them hides that.`,
  };
}

/** The treatments differ in more than what the question asks about. */
export function twoChanges({ changes }: Evidence['two-changes'], { trial }: Telling): CaveatText {
  const named = changesText(trial, changes);
  return {
    reason: `the treatments differ in more than one thing (${named})`,
    sentence: `The treatments differ in more than one thing (${named}). Which of them made a difference cannot be told.`,
  };
}

/** "soaking and storage temperature". */
export const changesText = (trial: Trial, changes: Evidence['two-changes']['changes']): string =>
  list(changes.map(({ what }) => (what === 'varies' ? VARIES[trial.varies ?? 'other'] : WHAT[what])));

const WHAT = { soak: 'soaking', temperature: 'storage temperature', moisture: 'storage moisture' } as const;
const VARIES = {
  soak: 'soaking',
  drying: 'drying',
  storage: 'storage',
  light: 'light',
  temperature: 'temperature',
  medium: 'medium',
  dressing: 'dressing',
  age: 'age of the seed',
  other: 'what the question asks about',
} as const;
