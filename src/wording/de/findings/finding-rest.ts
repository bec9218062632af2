import { formOf } from '../form-of.ts';
import { marginDate } from './margin-date.ts';
import { ofTreatment } from './of-treatment.ts';
import type { Saying } from './saying.ts';
import { untestableText } from './untestable-text.ts';

/** The sentences that read alike for every measure: likeness, a serious caveat in the way, nothing to be told. */
export function findingRest(s: Saying): string {
  const { probably, because, reasons, fitting, units, threshold } = s;
  const numbers = `${ofTreatment(s)}; ${fitting}${units}`;
  switch (s.facts.case) {
    case 'same':
      return `Beide Behandlungen waren ${probably}gleich genug für diesen Zweck: Jeder Unterschied ist kleiner als die ${threshold} (${fitting}${units}).${marginDate(s)}${because}`;
    case 'likeness-not-agreed':
      return `Ein Unterschied wurde nicht gezeigt (${numbers}). Wäre die ${threshold} vorher vereinbart gewesen, gälte das ${probably}als gleich genug.${because}`;
    case 'same-cause-unclear':
      return `Ein Unterschied war nicht zu sehen (${numbers}), aber ${reasons}; das könnte einen verdecken.`;
    case 'cause-unclear':
      return `Die ${formOf(s.tray, 2)} unterschieden sich: ${s.atB} ${s.estimate} (${fitting}${units}), aber ${reasons}. Was die Ursache war, lässt sich nicht sagen.`;
    default:
      return untestableText(s);
  }
}
