import type { Group } from '../../../analysis/analysis.ts';
import { isWaterLost } from '../../is-water-lost.ts';
import { number } from '../number.ts';
import { quantity } from '../quantity.ts';
import type { Saying } from './saying.ts';
import { survivors } from './survivors.ts';

/**
 * The two means of a comparison, without a closing stop: "On day 14 Sealed jar seedlings averaged 42 mm and
 * Paper packet seedlings 39 mm". Empty where a group has no estimate (pooled comparisons have no groups).
 */
export function averagesText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  if (treatment?.estimate == null || control?.estimate == null) return '';
  const value = (estimate: number) => quantity(estimate, s.result.unit, null, s.facts.digits);
  const [b, a] = [value(treatment.estimate), value(control.estimate)];
  switch (s.result.measure) {
    case 't50':
      return `Half of the ${s.b('seeds')} that came up were up by ${dayOf(treatment)} and half of the ${s.a('seeds')} by ${dayOf(control)}`;
    case 'mgt':
      return `The ${s.b('seeds')} that came up took ${b} on average and the ${s.a('seeds')} ${a}`;
    case 'spread':
      return `The middle half of the ${s.b('seedlings')} came up within ${b} and that of the ${s.a('seedlings')} within ${a}`;
    case 'maguire':
      return `Maguire’s rate, which counts both how many came up and how fast, was ${number(treatment.estimate, 1)} for ${s.b('seed')} and ${number(control.estimate, 1)} for ${s.a('seed')}`;
    case 'moisture':
      if (isWaterLost(s.result)) return `${s.b('seed')} lost ${b} of its mass and ${s.a('seed')} ${a}`;
      return `${s.b('seed')} had ${b} moisture and ${s.a('seed')} ${a}`;
    default: {
      const noun = survivors(s) ? 'seedlings' : s.tray(2);
      const day = s.result.days[s.comparison.lot] ?? s.result.day;
      const averaged = `${s.b(noun)} averaged ${b} and ${s.a(noun)} ${a}`;
      return day === null ? averaged : `On day ${number(day)} ${averaged}`;
    }
  }
}

/** "day 5.4 (between the checks of day 5 and day 8)"; the checks where the mean of the units lies between them. */
function dayOf({ estimate, bracket }: Group): string {
  const day = `day ${number(estimate ?? 0, 1)}`;
  if (estimate === null || bracket?.after == null || bracket.by === null || bracket.after <= 0) return day;
  if (estimate < bracket.after || estimate > bracket.by) return day;
  return `${day} (between the checks of day ${number(bracket.after)} and day ${number(bracket.by)})`;
}
