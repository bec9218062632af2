import { hasUnknownSpread } from '../../../analysis/has-unknown-spread.ts';
import { sizeText } from '../size-text.ts';
import { unitWord } from '../unit-word.ts';
import type { Saying } from './saying.ts';

/** What stands after a difference that could not be shown: why likeness is not claimed, other limits, what would settle it. */
export function settleText(s: Saying): string {
  return `${heldBack(s)}${besides(s)}${settle(s)}`;
}

function heldBack({ facts, margin, tray }: Saying): string {
  if (facts.likenessHeldBack === null) return '';
  const reason = facts.likenessHeldBack === 'coarse' ? 'checks so far apart' : `fewer than 3 ${tray(2)} of each`;
  return ` The whole range is smaller than ${margin}, but with ${reason} the two are not called alike.`;
}

const besides = ({ comparison, reasons }: Saying): string =>
  comparison.ceiling === 'cause-unclear' ? ` Besides, ${reasons}, which could hide a difference or make one.` : '';

function settle({ trial, facts, words, comparison }: Saying): string {
  if (facts.settle === null || facts.likenessHeldBack !== null) return '';
  if (facts.units.kind === 'block' && comparison.lot === 'all') return '';
  const { units, difference } = facts.settle;
  const { kind } = facts.units;
  const word = kind === 'block' ? unitWord(trial, 'sowing', 2) : unitWord(trial, kind, 2);
  const each =
    kind === 'block' ? `${units} ${unitWord(trial, 'block', units)} with both in each` : `${units} ${word} of each`;
  const spread = hasUnknownSpread(comparison)
    ? `If ${unitWord(trial, kind, 2)} vary twice as much as single seeds do by luck, which this trial could not show`
    : `At this trial’s ${unitWord(trial, kind)}-to-${unitWord(trial, kind)} spread`;
  return ` ${spread}, about ${each} would settle a difference of ${sizeText(difference, words)}.`;
}
