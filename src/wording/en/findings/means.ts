import { isWithinBlocks } from '../../is-within-blocks.ts';
import { sentence } from '../../sentence.ts';
import { averagesText } from './averages-text.ts';
import { claimText } from './claim-text.ts';
import { findingRest } from './finding-rest.ts';
import { bracketText, halfApartText, halvesText } from './half-apart-text.ts';
import { marginDate } from './margin-date.ts';
import { marginTail } from './margin-tail.ts';
import type { Saying } from './saying.ts';
import { settleText } from './settle-text.ts';
import { unitWord } from '../unit-word.ts';
import { survivors } from './survivors.ts';

/**
 * Result of a comparison of means of units (times, rates, traits, moisture): the two means, the
 * difference with its range, then what the verdict allows to be said about it.
 */
export function means(s: Saying): string {
  if (s.facts.case === 'untestable' || s.facts.case === 'no-number') return `${findingRest(s)}${survivors(s) ?? ''}`;
  if (s.facts.coarse && (s.facts.case === 'different' || s.facts.case === 'small-not-agreed')) return lagOnly(s);
  return `${head(s)}${verdictText(s)}${survivors(s) ?? ''}`;
}

function head(s: Saying): string {
  const { result, estimate, bareRange, units } = s;
  const { treatment, control } = s.facts.groups;
  if (result.measure === 't50' && treatment && control && bareRange === null) return halfApartText(s);
  const range = bareRange === null ? '' : `${s.judged || 'the data fit with '}${bareRange}; `;
  const look = averagesText(s);
  return `${look === '' ? s.name : look}: ${withinBlocks(s)}${estimate} (${range}${units}).`;
}

function withinBlocks({ trial, comparison, facts }: Saying): string {
  const block = unitWord(trial, 'block', 1);
  return isWithinBlocks(comparison, facts.groups) ? `compared ${block} by ${block}, ` : '';
}

/** Checks far apart: that there is a lag is safe, how long it is, is not. */
function lagOnly(s: Saying): string {
  const claim = `${sentence(claimText(s))}, but the checks were too far apart to say by how many days`;
  return `${claim}. ${s.result.measure === 't50' ? halvesText(s) : averagesText(s)} (${allowed(s)}${s.units}).${s.because}`;
}

function allowed(s: Saying): string {
  const range = s.result.measure === 't50' ? bracketText(s) : null;
  return range === null ? '' : `the check days alone allow ${range}; `;
}

/** Why there is no range though both have several units. */
function noSpread({ facts, comparison, trial, tray }: Saying): string {
  if (facts.units.kind !== 'block') {
    return `All ${tray(2)} of a kind gave the same figure, so their ordinary spread is not known.`;
  }
  const block = comparison.lot === 'all' ? 'lot' : unitWord(trial, 'block', 1);
  return `The difference was the same in every ${block}, so how much it ordinarily varies is not known.`;
}

function verdictText(s: Saying): string {
  const { facts, margin, because, reasons, probably } = s;
  switch (facts.case) {
    case 'matters':
      return ` So ${claimText(s)}, and all of that range is beyond the ${margin} ${
        facts.marginFixed ? `that ${s.was} to matter` : 'named as mattering, though that was not fixed before counting'
      }.${because}`;
    case 'different':
      return ` So ${claimText(s)}.${marginTail(s)}${because}`;
    case 'small':
      return ` So ${claimText(s)}, but by less than the ${margin} that ${s.was} to matter.${because}`;
    case 'small-not-agreed':
      return ` So ${claimText(s)}. Had ${margin} been agreed beforehand, this would count as too small to matter.${because}`;
    case 'same':
      return ` So the two were ${probably}alike for this purpose: any difference is smaller than ${margin}.${marginDate(s)}${because}`;
    case 'likeness-not-agreed':
      return ` So no difference was shown. Had ${margin} been agreed beforehand, this would ${probably}count as alike.${because}`;
    case 'same-cause-unclear':
      return ` No difference was seen, but ${reasons}, which could hide one.`;
    case 'cause-unclear':
      return ` But ${reasons}. What caused the difference cannot be told.`;
    default:
      return ` A difference could not be shown, which is not proof of sameness.${
        s.bareRange === null ? ` ${noSpread(s)}` : ''
      }${settleText(s)}`;
  }
}
