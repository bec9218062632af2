import { isWithinBlocks } from '../../is-within-blocks.ts';
import { sentence } from '../../sentence.ts';
import { article } from '../article.ts';
import { formOf } from '../form-of.ts';
import { unitNoun } from '../unit-noun.ts';
import { averagesText } from './averages-text.ts';
import { beyondText } from './beyond-text.ts';
import { bracketText } from './bracket-text.ts';
import { claimText } from './claim-text.ts';
import { findingRest } from './finding-rest.ts';
import { halfApartText, halvesText } from './half-apart-text.ts';
import { marginDate } from './margin-date.ts';
import { marginTail } from './margin-tail.ts';
import type { Saying } from './saying.ts';
import { settleText } from './settle-text.ts';
import { survivors } from './survivors.ts';

/**
 * Result of a comparison of means of units (times, rates, traits, moisture): the two means, the difference
 * with its range, then what the verdict allows to be said about it.
 */
export function means(s: Saying): string {
  if (s.facts.case === 'untestable' || s.facts.case === 'no-number') return `${findingRest(s)}${survivors(s) ?? ''}`;
  if (s.facts.coarse && (s.facts.case === 'different' || s.facts.case === 'small-not-agreed')) return lagOnly(s);
  return `${head(s)}${verdictText(s)}${survivors(s) ?? ''}`;
}

function head(s: Saying): string {
  const { result, estimate, bareRange, fitting, units } = s;
  const { treatment, control } = s.facts.groups;
  if (result.measure === 't50' && treatment && control && bareRange === null) return halfApartText(s);
  const look = averagesText(s);
  return `${look === '' ? s.name : look}: ${withinBlocks(s)}${estimate} (${fitting}${units}).`;
}

function withinBlocks({ trial, comparison, facts }: Saying): string {
  const { one } = unitNoun(trial, 'block');
  return isWithinBlocks(comparison, facts.groups) ? `${one} für ${one} verglichen ` : '';
}

/** Checks far apart: that there is a lag is safe, how long it is, is not. */
function lagOnly(s: Saying): string {
  const claim = `${sentence(claimText(s))}, aber die Auszählungen lagen zu weit auseinander, um zu sagen, um wie viele Tage`;
  return `${claim}. ${s.result.measure === 't50' ? halvesText(s) : averagesText(s)} (${allowed(s)}${s.units}).${s.because}`;
}

function allowed(s: Saying): string {
  const range = s.result.measure === 't50' ? bracketText(s) : null;
  return range === null ? '' : `die Tage der Auszählung allein lassen ${range} zu; `;
}

/** Why there is no range though both have several units. */
function noSpread({ facts, comparison, trial, tray }: Saying): string {
  if (facts.units.kind !== 'block') {
    return `Alle ${formOf(tray, 2)} derselben Behandlung ergaben denselben Wert, also ist ihre gewöhnliche Streuung nicht bekannt.`;
  }
  const block = unitNoun(trial, 'block');
  const every = comparison.lot === 'all' ? 'jeder Partie' : `${article('jeder', block.gender, 'dative')} ${block.one}`;
  return `Der Unterschied war in ${every} gleich groß, also ist nicht bekannt, wie sehr er gewöhnlich schwankt.`;
}

function verdictText(s: Saying): string {
  const { facts, threshold, thresholdSet, because, reasons, probably } = s;
  const claim = `Das heißt: ${sentence(claimText(s))}`;
  switch (facts.case) {
    case 'matters':
      return ` ${claim}, und der ganze Bereich liegt ${beyondText(s)}.${because}`;
    case 'different':
      return ` ${claim}.${marginTail(s)}${because}`;
    case 'small':
      return ` ${claim}, aber um weniger als die ${thresholdSet}.${because}`;
    case 'small-not-agreed':
      return ` ${claim}. Wäre die ${threshold} vorher vereinbart gewesen, gälte das als zu klein, um zu zählen.${because}`;
    case 'same':
      return ` Das heißt: Beide Behandlungen waren ${probably}gleich genug für diesen Zweck. Jeder Unterschied ist kleiner als die ${threshold}.${marginDate(s)}${because}`;
    case 'likeness-not-agreed':
      return ` Ein Unterschied wurde also nicht gezeigt. Wäre die ${threshold} vorher vereinbart gewesen, gälte das ${probably}als gleich genug.${because}`;
    case 'same-cause-unclear':
      return ` Ein Unterschied war nicht zu sehen, aber ${reasons}; das könnte einen verdecken.`;
    case 'cause-unclear':
      return ` Aber ${reasons}. Was die Ursache des Unterschieds war, lässt sich nicht sagen.`;
    default:
      return ` Ein Unterschied ließ sich nicht zeigen. Das heißt nicht, dass beide gleich sind.${
        s.bareRange === null ? ` ${noSpread(s)}` : ''
      }${settleText(s)}`;
  }
}
