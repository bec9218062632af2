import { hasUnknownSpread } from '../../../analysis/has-unknown-spread.ts';
import { sentence } from '../../sentence.ts';
import { counted } from '../counted.ts';
import { sizeText } from '../size-text.ts';
import { unitNoun } from '../unit-noun.ts';
import { heldBack } from './held-back.ts';
import type { Saying } from './saying.ts';

/** What stands after a difference that could not be shown: why likeness is not claimed, other limits, what would settle it. */
export const settleText = (s: Saying): string => `${heldBack(s)}${besides(s)}${settle(s)}`;

const besides = ({ comparison, reasons }: Saying): string =>
  comparison.ceiling === 'cause-unclear'
    ? ` Außerdem gilt: ${sentence(reasons)}; das könnte einen Unterschied verdecken oder vortäuschen.`
    : '';

function settle({ trial, facts, words, comparison }: Saying): string {
  if (facts.settle === null || facts.likenessHeldBack !== null) return '';
  const { kind } = facts.units;
  if (kind === 'block' && comparison.lot === 'all') return '';
  const { units, difference } = facts.settle;
  const noun = unitNoun(trial, kind);
  const each = `${counted(units, noun)} ${kind === 'block' ? 'mit beiden Behandlungen' : 'je Behandlung'}`;
  const spread = hasUnknownSpread(comparison)
    ? `Wenn ${noun.many} doppelt so stark schwanken, wie es der Zufall einzelner Samen täte (dieser Versuch konnte es nicht zeigen),`
    : `Bei der Streuung von ${noun.one} zu ${noun.one} in diesem Versuch`;
  return ` ${spread} würden etwa ${each} einen Unterschied von ${sizeText(difference, words)} klären.`;
}
