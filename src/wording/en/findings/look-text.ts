import type { Group } from '../../../analysis/analysis.ts';
import { amount } from '../../amount.ts';
import { differenceWords } from '../difference-words.ts';
import { number } from '../number.ts';
import { rangeText } from '../range-text.ts';
import { averagesText } from './averages-text.ts';
import { halfUpText } from './half-up-text.ts';
import type { Saying } from './saying.ts';

/** What was seen in both, without a word about the difference; empty where a number is missing. */
export function lookText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  if (!treatment || !control) return '';
  switch (s.result.measure) {
    case 'germination':
      return countsText(s, treatment, control);
    case 't50':
      return halfApartText(s, treatment, control);
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

/** "Half of the … seeds were up between day 3 and day 5, half of … between day 5 and day 8: 0 to 5 days earlier." */
export function halfApartText(s: Saying, treatment: Group, control: Group): string {
  const [b, a] = [halfUpText(treatment), halfUpText(control)];
  if (b === null || a === null) return '';
  const halves = `Half of the ${s.b('seeds')} were up ${b}, half of the ${s.a('seeds')} ${a}`;
  const { lower, upper } = s.comparison.bracket ?? { lower: null, upper: null };
  if (lower === null || upper === null) return `${halves}. The checks were too far apart to say more.`;
  const digits = Number.isInteger(lower) && Number.isInteger(upper) ? 0 : 1;
  const apart = rangeText(amount(lower, digits), amount(upper, digits), differenceWords('t50', null, 'days'));
  return `${halves}: ${apart}. The checks were too far apart to say more.`;
}
