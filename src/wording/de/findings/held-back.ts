import { formOf } from '../form-of.ts';
import type { Saying } from './saying.ts';

/** Why likeness is not claimed although the whole range lies inside the agreed margin; empty where nothing holds it back. */
export function heldBack({ facts, threshold, tray }: Saying): string {
  if (facts.likenessHeldBack === null) return '';
  const reason =
    facts.likenessHeldBack === 'coarse'
      ? 'bei Auszählungen, die so weit auseinanderliegen,'
      : `mit weniger als 3 ${formOf(tray, 3, 'dative')} je Behandlung`;
  return ` Der ganze Bereich ist kleiner als die ${threshold}, aber ${reason} nennen wir beide nicht gleich genug.`;
}
