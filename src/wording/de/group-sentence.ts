import type { Group, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { digitsFor } from '../digits-for.ts';
import { label } from '../label.ts';
import { counted } from './counted.ts';
import { shareText } from './findings/share-text.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { quantity } from './quantity.ts';
import { storedName } from './stored-name.ts';
import { unitNoun } from './unit-noun.ts';

/** One group: "Dichtes Glas: 88 von 100 (264 von 300 Samen, 6 Schalen; die Daten passen zu allem zwischen 80 und 93)". */
export function groupSentence(trial: Trial, result: Result, group: Group): string {
  const lot = trial.lots.length > 1 ? `, ${lotName(trial, group.lot)}` : '';
  const stored = group.stored === null ? '' : `, ${storedName(group.stored)}`;
  const units = counted(group.units, unitNoun(trial, group.unit));
  const name = `${label(trial, group.treatment)}${lot}${stored}`;
  if (group.estimate === null) return `${name}: nicht bekannt (${units})`;
  return `${name}: ${group.count === null ? mean(trial, result, group) : share(group, units)}`;
}

function share(group: Group, units: string): string {
  const { count, seeds, interval } = group;
  const limits = interval && `zwischen ${limit(interval.lower)} und ${limit(interval.upper)}`;
  const fits =
    limits === null
      ? ''
      : group.units === 1
        ? `; nach dem Zufall der Samen allein passt alles ${limits}`
        : `; die Daten passen zu allem ${limits}`;
  if (seeds === 100) return `${number(count ?? 0)} von 100 Samen (${units}${fits})`;
  return `${shareText({ estimate: group.estimate ?? 0 })} (${number(count ?? 0)} von ${number(seeds ?? 0)} Samen, ${units}${fits})`;
}

const limit = (value: number | null): string => shareText({ estimate: value ?? 0 }).replace(' von 100', '');

function mean(trial: Trial, { measure, unit }: Result, { estimate, interval, units, unit: kind }: Group): string {
  const { lower, upper } = interval ?? { lower: null, upper: null };
  const digits = digitsFor(measure, unit, lower === null || upper === null ? Math.abs(estimate ?? 0) : upper - lower);
  const noun = unitNoun(trial, kind);
  const of = units === 1 ? counted(1, noun) : `Mittelwert von ${counted(units, noun, 'dative')}`;
  const say = (value: number) => quantity(value, unit, null, digits);
  const dative = (value: number) => quantity(value, unit, null, digits, 'dative');
  const fits =
    lower === null || upper === null
      ? ''
      : lower < 0 && upper > 0
        ? `; die Daten passen zu allem bis ${say(upper)}`
        : `; die Daten passen zu allem zwischen ${number(lower, digits)} und ${dative(upper)}`;
  return `${say(estimate ?? 0)} (${of}${fits})`;
}
