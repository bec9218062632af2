import { hardlyAny } from '../../../analysis/hardly-any.ts';
import { sentence } from '../../sentence.ts';
import { article } from '../article.ts';
import { counted } from '../counted.ts';
import { formOf } from '../form-of.ts';
import { sizeText } from '../size-text.ts';
import { unitNoun } from '../unit-noun.ts';
import { lookText } from './look-text.ts';
import type { Saying } from './saying.ts';

/** Without replication: what was seen, why it tells nothing, and what would make it a trial. */
export function untestableText(s: Saying): string {
  const { facts, comparison, reasons } = s;
  const look = lookText(s);
  const besides =
    facts.reasons.length > 0 && comparison.ceiling === 'cause-unclear' ? ` Außerdem gilt: ${sentence(reasons)}.` : '';
  return `Das lässt sich nicht sagen.${look === '' ? '' : ` ${look}`} ${why(s)}${besides} ${again(s)}`;
}

function why({ facts, comparison, atB, atA, tray }: Saying): string {
  const { early } = facts;
  const { treatment, control, kind } = facts.units;
  if (early !== null && comparison.estimate === null) {
    const part = early === 0.5 ? 'die Hälfte' : 'ein Viertel';
    return `In mindestens ${article('ein', tray.gender, 'dative')} ${tray.one} war ${part} dessen, was aufging, schon bei der ersten Auszählung aufgegangen; wann, ist also nicht bekannt.`;
  }
  if (comparison.estimate === null || treatment === 0 || control === 0) {
    return 'Bei mindestens einer der beiden Behandlungen fehlt die Zahl zum Vergleichen.';
  }
  const luck = `lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen ${tray.one} und ${tray.one} trennen.`;
  const one = `${article('ein', tray.gender, 'dative')} ${tray.one}`;
  if (treatment === 1 && control === 1) return `Mit ${one} je Behandlung ${luck}`;
  if (kind === 'block' || (treatment > 1 && control > 1)) return `Mit so wenigen ${formOf(tray, 2, 'dative')} ${luck}`;
  return `Mit nur ${one} ${treatment === 1 ? atB : atA} ${luck}`;
}

function again({ trial, result, comparison, facts, words }: Saying): string {
  if (facts.early !== null && comparison.estimate === null) {
    return 'Eine Wiederholung braucht eine frühere erste Auszählung.';
  }
  if (hardlyAny(result, comparison))
    return 'Es gingen so wenige Samen auf, dass nur eines feststeht: Beide keimten schlecht.';
  const { kind } = facts.units;
  const noun = unitNoun(trial, kind === 'block' ? 'sowing' : kind);
  const start = 'Es ist ein erster Blick, und es lohnt sich, ihn mit';
  if (facts.settle === null) return `${start} mehreren ${formOf(noun, 2, 'dative')} je Behandlung zu wiederholen.`;
  const { units, difference } = facts.settle;
  return `${start} ${counted(units, noun, 'dative')} je Behandlung zu wiederholen; das reicht für einen Unterschied von ${sizeText(difference, words)}.`;
}
