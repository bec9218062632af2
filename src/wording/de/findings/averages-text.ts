import type { Group } from '../../../analysis/analysis.ts';
import { isWaterLost } from '../../is-water-lost.ts';
import { sentence } from '../../sentence.ts';
import { formOf } from '../form-of.ts';
import { number } from '../number.ts';
import { quantity } from '../quantity.ts';
import type { Saying } from './saying.ts';
import { survivors } from './survivors.ts';

/**
 * The two means of a comparison, without a closing stop: "Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel
 * auf 42 mm, bei „Papiertüte“ auf 39 mm". Empty where a group has no estimate (pooled comparisons have no groups).
 */
export function averagesText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  if (treatment?.estimate == null || control?.estimate == null) return '';
  const { atB, atA } = s;
  const [b, a] = [treatment.estimate, control.estimate];
  const value = (estimate: number, form?: 'dative') =>
    quantity(estimate, s.result.unit, null, s.facts.digits, form ?? 'plain');
  switch (s.result.measure) {
    case 't50':
      return `Die Hälfte dessen, was aufging, war ${atB} bis ${dayOf(treatment)} aufgegangen, ${atA} bis ${dayOf(control)}`;
    case 'mgt':
      return `Was aufging, brauchte ${atB} im Mittel ${value(b)}, ${atA} ${value(a)}`;
    case 'spread':
      return `Die mittlere Hälfte der Keimlinge ging ${atB} innerhalb von ${value(b, 'dative')} auf, ${atA} innerhalb von ${value(a, 'dative')}`;
    case 'maguire':
      return `Die Keimrate nach Maguire, in der die Zahl und das Tempo stecken, war ${atB} ${number(b, 1)} und ${atA} ${number(a, 1)}`;
    case 'moisture':
      if (isWaterLost(s.result)) return `Das Saatgut verlor ${atB} ${value(b)} seiner Masse, ${atA} ${value(a)}`;
      return `Der Feuchtegehalt war ${atB} ${value(b)} und ${atA} ${value(a)}`;
    default: {
      const noun = `die ${survivors(s) ? 'Keimlinge' : formOf(s.tray, 2)}`;
      const day = s.result.days[s.comparison.lot] ?? s.result.day;
      const means = `${atB} im Mittel auf ${value(b)}, ${atA} auf ${value(a)}`;
      return day === null ? sentence(`${noun} kamen ${means}`) : `Am Tag ${number(day)} kamen ${noun} ${means}`;
    }
  }
}

/** "Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8)"; the checks where the mean of the units lies between them. */
function dayOf({ estimate, bracket }: Group): string {
  const day = `Tag ${number(estimate ?? 0, 1)}`;
  if (estimate === null || bracket?.after == null || bracket.by === null || bracket.after <= 0) return day;
  if (estimate < bracket.after || estimate > bracket.by) return day;
  return `${day} (zwischen den Auszählungen von Tag ${number(bracket.after)} und Tag ${number(bracket.by)})`;
}
