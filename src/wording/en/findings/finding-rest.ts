import { marginDate } from './margin-date.ts';
import { ofTreatment } from './of-treatment.ts';
import type { Saying } from './saying.ts';
import { untestableText } from './untestable-text.ts';

/** The sentences that read alike for every measure: likeness, a serious caveat in the way, nothing to be told. */
export function findingRest(s: Saying): string {
  const { probably, because, reasons, bareRange, units, margin } = s;
  const numbers = `${ofTreatment(s)}; ${s.judged}${bareRange}; ${units}`;
  switch (s.facts.case) {
    case 'same':
      return `The two were ${probably}alike for this purpose: any difference is smaller than ${margin} (${
        s.judged || 'the data fit with '
      }${bareRange}; ${units}).${marginDate(s)}${because}`;
    case 'likeness-not-agreed':
      return `No difference was shown (${numbers}). Had ${margin} been agreed beforehand, this would ${probably}count as alike.${because}`;
    case 'same-cause-unclear':
      return `No difference was seen (${numbers}), but ${reasons}, which could hide one.`;
    case 'cause-unclear':
      return `The ${s.tray(2)} differed: ${s.name} ${s.estimate} (${bareRange}; ${units}), but ${reasons}. What caused it cannot be told.`;
    default:
      return untestableText(s);
  }
}
