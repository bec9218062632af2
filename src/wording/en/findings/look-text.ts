import type { Group } from '../../../analysis/analysis.ts';
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

function countsText(s: Saying, treatment: Group, control: Group): string {
  if (treatment.count === null || treatment.seeds === null || control.count === null || control.seeds === null)
    return '';
  const trays = ({ units }: Group, name: (noun: string) => string) =>
    `the ${units === 1 ? '' : `${units} `}${name(s.tray(units))}`;
  const ofB = `${number(treatment.count)} of ${number(treatment.seeds)} seeds came up in ${trays(treatment, s.b)}`;
  return `${ofB} and ${number(control.count)} of ${number(control.seeds)} in ${trays(control, s.a)}.`;
}
