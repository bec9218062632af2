import type { Analysis, Group, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { sentence } from '../sentence.ts';
import { shareText } from './findings/share-text.ts';
import { formOf } from './form-of.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { storedText } from './stored-text.ts';
import { unitNoun } from './unit-noun.ts';

/** A storage series test by test: "Nach 1 Jahr: Schuppen 90 von 100 und Kühlschrank 89 von 100 (4 und 4 Chargen).", then its end. */
export function storageSeries(trial: Trial, { results }: Analysis): readonly string[] {
  const result = results.find(({ measure, groups }) => measure === 'germination' && groups.some(isStored));
  if (result === undefined) return [];
  const lots = [...new Set(result.groups.map(({ lot }) => lot))];
  return lots.flatMap((lot) => ofLot(trial, result, lot));
}

function ofLot(trial: Trial, { groups }: Result, lot: string): readonly string[] {
  const where = trial.lots.length > 1 ? `${lotName(trial, lot)}, ` : '';
  const times = [...new Set(groups.filter((group) => group.lot === lot).map(({ stored }) => stored))]
    .filter((time) => time !== null)
    .sort((a, b) => a - b);
  const tests = times.map((time) => {
    const here = groups.filter((group) => group.lot === lot && group.stored === time && group.estimate !== null);
    const shares = here.map(
      ({ treatment, estimate }) => `${label(trial, treatment)} ${shareText({ estimate: estimate ?? 0 })}`,
    );
    const when = time === 0 ? 'am Anfang' : `nach ${storedText(time, 'dative')}`;
    return sentence(`${where}${when}: ${list(shares)} (${unitsText(trial, here)}).`);
  });
  const dates = `${number(times.length)} ${times.length === 1 ? 'Prüftermin' : 'Prüftermine'}`;
  return [...tests, sentence(`${where}${dates}; es wird nichts vorausgesagt.`)];
}

function unitsText(trial: Trial, groups: readonly Group[]): string {
  const kinds = new Set(groups.map(({ unit }) => unit));
  const [kind = 'sowing'] = kinds;
  return `${list(groups.map(({ units }) => String(units)))} ${formOf(unitNoun(trial, kinds.size === 1 ? kind : 'sowing'), 2)}`;
}

const isStored = ({ stored }: Group) => stored !== null;
