import type { Group } from '../../../analysis/analysis.ts';
import { amount } from '../../amount.ts';
import { differenceWords } from '../difference-words.ts';
import { number } from '../number.ts';
import { rangeText } from '../range-text.ts';
import type { Saying } from './saying.ts';

/** "Half of the … seeds were up between day 3 and day 5, half of … between day 5 and day 8: 0 to 5 days earlier." */
export function halfApartText(s: Saying): string {
  const halves = halvesText(s);
  if (halves === '') return '';
  const range = bracketText(s);
  const units = s.facts.case === 'untestable' ? '' : ` (${s.units})`;
  const why = s.facts.case === 'untestable' ? ' The checks were too far apart to say more.' : '';
  return `${halves}${range === null ? '' : `: ${range}`}${units}.${why}`;
}

/** When half of each was up, as far as the checks tell; empty where one of them is not known. */
export function halvesText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  const [b, a] = [treatment && halfUp(treatment), control && halfUp(control)];
  return b && a ? `Half of the ${s.b('seeds')} were up ${b}, half of the ${s.a('seeds')} ${a}` : '';
}

/** What the check days alone allow: "0 to 5 days earlier". Null where they set no limit. */
export function bracketText({ comparison }: Saying): string | null {
  const { lower, upper } = comparison.bracket ?? { lower: null, upper: null };
  if (lower === null || upper === null) return null;
  const digits = Number.isInteger(lower) && Number.isInteger(upper) ? 0 : 1;
  return rangeText(amount(lower, digits), amount(upper, digits), differenceWords('t50', null, 'days'));
}

/** "between day 3 and day 5", "by day 3"; null where half was not reached. */
function halfUp({ bracket }: Group): string | null {
  if (bracket?.by == null) return null;
  const by = `day ${number(bracket.by)}`;
  return bracket.after === null || bracket.after <= 0 ? `by ${by}` : `between day ${number(bracket.after)} and ${by}`;
}
