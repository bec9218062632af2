import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { amount } from '../amount.ts';
import { digitsFor } from '../digits-for.ts';
import { leftOutOf } from '../left-out-of.ts';
import { differenceText } from './difference-text.ts';
import { differenceWords } from './difference-words.ts';
import { leftOutReason } from './left-out-reason.ts';
import { list } from './list.ts';
import { rangeText } from './range-text.ts';
import { sentence } from './sentence.ts';
import { verdictPhrase } from './verdict-phrase.ts';
import { unitWord } from './unit-word.ts';

/** "Tray T7 was left out (knocked over on day 5).", "With it in: 9 more per 100 (…). The finding does not change." */
export function leftOut(trial: Trial, result: Result, comparison: Comparison): readonly string[] {
  const out = leftOutOf(trial, result, comparison);
  if (out.length === 0) return [];
  const named = list(out.map(({ sowing, reason, what }) => `${sowing} (${what ?? leftOutReason(reason)})`));
  const were = out.length === 1 ? 'was' : 'were';
  const first = `${sentence(unitWord(trial, 'sowing', out.length))} ${named} ${were} left out.`;
  const second = withThem(result, comparison, out.length === 1 ? 'it' : 'them');
  return second === null ? [first] : [first, second];
}

function withThem(result: Result, { withLeftOut, verdict, estimate }: Comparison, them: string): string | null {
  if (withLeftOut?.estimate == null) return null;
  const words = differenceWords(result.measure, result.column, result.unit);
  const { lower, upper } = withLeftOut.interval ?? { lower: null, upper: null };
  const whole = lower !== null && upper !== null;
  const digits = digitsFor(result.measure, result.unit, whole ? upper - lower : Math.abs(withLeftOut.estimate));
  const round = (value: number) => amount(value, digits, result.matters);
  const range = whole ? ` (${rangeText(round(lower), round(upper), { ...words, after: '' })})` : '';
  const turned = Math.sign(withLeftOut.estimate) !== Math.sign(estimate ?? 0) && withLeftOut.verdict !== 'unclear';
  const change =
    withLeftOut.verdict !== verdict
      ? `changes to “${verdictPhrase(withLeftOut.verdict)}”`
      : turned && (verdict === 'different' || verdict === 'matters')
        ? 'turns round'
        : 'does not change';
  return `With ${them} in: ${differenceText(round(withLeftOut.estimate), words)}${range}. The finding ${change}.`;
}
