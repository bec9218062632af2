import type { Group } from '../../../analysis/analysis.ts';
import { number } from '../number.ts';
import { bracketText } from './bracket-text.ts';
import type { Saying } from './saying.ts';

/** "Bei … war die Hälfte zwischen Tag 3 und Tag 5 aufgegangen, bei … zwischen Tag 5 und Tag 8: 0 bis 5 Tage früher." */
export function halfApartText(s: Saying): string {
  const halves = halvesText(s);
  if (halves === '') return '';
  const range = bracketText(s);
  const units = s.facts.case === 'untestable' ? '' : ` (${s.units})`;
  const why = s.facts.case === 'untestable' ? ' Die Auszählungen lagen zu weit auseinander, um mehr zu sagen.' : '';
  return `${halves}${range === null ? '' : `: ${range}`}${units}.${why}`;
}

/** When half of each was up, as far as the checks tell; empty where one of them is not known. */
export function halvesText(s: Saying): string {
  const { treatment, control } = s.facts.groups;
  const [b, a] = [treatment && halfUp(treatment), control && halfUp(control)];
  return b && a ? `Die Hälfte dessen, was aufging, war ${s.atB} ${b} aufgegangen, ${s.atA} ${a}` : '';
}

/** "zwischen Tag 3 und Tag 5", "bis Tag 3"; null where half was not reached. */
function halfUp({ bracket }: Group): string | null {
  if (bracket?.by == null) return null;
  const by = `Tag ${number(bracket.by)}`;
  return bracket.after === null || bracket.after <= 0 ? `bis ${by}` : `zwischen Tag ${number(bracket.after)} und ${by}`;
}
