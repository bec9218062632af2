import type { Group, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { digitsFor } from '../digits-for.ts';
import { shareText } from './findings/share-text.ts';
import { label } from '../label.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { quantity } from './quantity.ts';
import { storedName } from './stored-name.ts';
import { unitWord } from './unit-word.ts';

/** One group: "Sealed jar: 88 of 100 (264 of 300 seeds, 6 trays; the data fit with 80 to 93)". */
export function groupSentence(trial: Trial, result: Result, group: Group): string {
  const lot = trial.lots.length > 1 ? `, ${lotName(trial, group.lot)}` : '';
  const stored = group.stored === null ? '' : `, ${storedName(group.stored)}`;
  const units = `${group.units} ${unitWord(trial, group.unit, group.units)}`;
  const name = `${label(trial, group.treatment)}${lot}${stored}`;
  if (group.estimate === null) return `${name}: not known (${units})`;
  return `${name}: ${group.count === null ? mean(result, group, units) : share(group, units)}`;
}

function share(group: Group, units: string): string {
  const { count, seeds, interval } = group;
  const limits = interval && ` with ${limit(interval.lower)} to ${limit(interval.upper)}`;
  const fits = limits && `; ${group.units === 1 ? 'by seed luck alone it fits' : 'the data fit'}${limits}`;
  if (seeds === 100) return `${number(count ?? 0)} of 100 seeds (${units}${fits ?? ''})`;
  return `${shareText({ estimate: group.estimate ?? 0 })} (${number(count ?? 0)} of ${number(seeds ?? 0)} seeds, ${units}${fits ?? ''})`;
}

function limit(value: number | null): string {
  const text = shareText({ estimate: value ?? 0 });
  return text.replace(' of 100', '');
}

function mean({ measure, unit }: Result, { estimate, interval, units: count }: Group, units: string): string {
  const { lower, upper } = interval ?? { lower: null, upper: null };
  const digits = digitsFor(measure, unit, lower === null || upper === null ? Math.abs(estimate ?? 0) : upper - lower);
  const of = count === 1 ? units : `mean of ${units}`;
  const say = (value: number) => quantity(value, unit, null, digits);
  return `${say(estimate ?? 0)} (${of}${lower === null || upper === null ? '' : fits(lower, upper, digits, say)})`;
}

/** A time, length or mass below zero cannot be; of a range that reaches there only the upper end is said. */
function fits(lower: number, upper: number, digits: number, say: (value: number) => string): string {
  return lower < 0 && upper > 0
    ? `; the data fit with anything up to ${say(upper)}`
    : `; the data fit with ${number(lower, digits)} to ${say(upper)}`;
}
