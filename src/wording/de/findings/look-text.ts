import type { Group } from '../../../analysis/analysis.ts';
import { sentence } from '../../sentence.ts';
import { counted } from '../counted.ts';
import { number } from '../number.ts';
import { averagesText } from './averages-text.ts';
import { halfApartText } from './half-apart-text.ts';
import type { Saying } from './saying.ts';

/** What was seen in both, without a word about the difference; empty where a number is missing. */
export function lookText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  if (!treatment || !control) return '';
  switch (s.result.measure) {
    case 'germination':
      return countsText(s, treatment, control);
    case 't50':
      return halfApartText(s);
    default:
      return treatment.estimate === null || control.estimate === null ? '' : `${averagesText(s)}.`;
  }
}

/** "Bei „Dichtes Glas“ gingen 22 von 25 Samen auf (1 Schale), bei „Papiertüte“ 20 von 25 (1 Schale)." */
function countsText({ atB, atA, tray }: Saying, treatment: Group, control: Group): string {
  if (treatment.count === null || treatment.seeds === null || control.count === null || control.seeds === null)
    return '';
  const of = ({ count, seeds }: Group) => `${number(count ?? 0)} von ${number(seeds ?? 0)}`;
  const came = treatment.count === 1 ? 'ging' : 'gingen';
  const b = `${atB} ${came} ${of(treatment)} Samen auf (${counted(treatment.units, tray)})`;
  return sentence(`${b}, ${atA} ${of(control)} (${counted(control.units, tray)}).`);
}
