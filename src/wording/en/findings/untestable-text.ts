import { hardlyAny } from '../../../analysis/hardly-any.ts';
import { sizeText } from '../size-text.ts';
import { unitWord } from '../unit-word.ts';
import { lookText } from './look-text.ts';
import type { Saying } from './saying.ts';

/** Without replication: what was seen, why it tells nothing, and what would make it a trial. */
export function untestableText(s: Saying): string {
  const { facts, comparison, reasons } = s;
  const look = lookText(s);
  const besides = facts.reasons.length > 0 && comparison.ceiling === 'cause-unclear' ? ` Besides, ${reasons}.` : '';
  return `Cannot tell.${look === '' ? '' : ` ${look}`} ${why(s)}${besides} ${again(s)}`;
}

function why({ facts, comparison, name, controlName, tray }: Saying): string {
  const { early } = facts;
  const { treatment, control, kind } = facts.units;
  if (early !== null && comparison.estimate === null) {
    return `${early === 0.5 ? 'Half' : 'A quarter'} of what came up in at least one ${tray(1)} was up at the first check, so when is not known.`;
  }
  if (comparison.estimate === null || treatment === 0 || control === 0) {
    return 'For at least one of the two there is no number to compare.';
  }
  const luck = `the treatment cannot be told from ordinary ${tray(1)}-to-${tray(1)} luck.`;
  if (treatment === 1 && control === 1) return `With one ${tray(1)} of each, ${luck}`;
  if (kind === 'block' || (treatment > 1 && control > 1)) return `With so few ${tray(2)}, ${luck}`;
  return `With only one ${tray(1)} of ${treatment === 1 ? name : controlName}, ${luck}`;
}

function again({ trial, result, comparison, facts, words }: Saying): string {
  if (facts.early !== null && comparison.estimate === null) return 'A repeat needs an earlier first check.';
  if (hardlyAny(result, comparison)) return 'So few seeds came up that the finding is low germination in both.';
  const { kind } = facts.units;
  const trays = unitWord(trial, kind === 'block' ? 'sowing' : kind, 2);
  if (facts.settle === null) return `A first look, worth repeating with several ${trays} of each.`;
  const { units, difference } = facts.settle;
  return `A first look, worth repeating with ${units} ${trays} of each, enough for a difference of ${sizeText(difference, words)}.`;
}
