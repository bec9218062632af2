import type { Result } from '../../../analysis/analysis.ts';
import { fixedBeforehand } from '../../../analysis/fixed-beforehand.ts';
import { fixedOn } from '../../../analysis/fixed-on.ts';
import type { Trial } from '../../../trial/trial.ts';
import { date } from '../date.ts';
import { differenceWords } from '../difference-words.ts';
import { sizeText } from '../size-text.ts';

/** "Schwelle von 10 je 100 (kleinster Unterschied, der zählt), festgelegt am 4. April 2026." */
export function findingMargin(trial: Trial, result: Result): string {
  if (result.matters === null) return 'ein kleinster Unterschied, der zählt, wurde nicht genannt.';
  const words = differenceWords(result.measure, result.column, result.unit);
  const size = `Schwelle von ${sizeText(result.matters, words)} (kleinster Unterschied, der zählt)`;
  const fixing = fixedBeforehand(trial, { id: result.outcome }) ? fixedOn(trial) : null;
  if (fixing === null) return `${size}, nicht vor der ersten Auszählung festgelegt.`;
  return `${size}, festgelegt am ${date(fixing.date)}${fixing.how === 'stated' ? ', wie die Beteiligten angeben' : ''}.`;
}
