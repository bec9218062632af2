import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { leftOutFigures } from '../left-out-figures.ts';
import { leftOutOf } from '../left-out-of.ts';
import { differenceText } from './difference-text.ts';
import { differenceWords } from './difference-words.ts';
import { leftOutReason } from './left-out-reason.ts';
import { list } from './list.ts';
import { rangeText } from './range-text.ts';
import { sentence } from '../sentence.ts';
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

function withThem(result: Result, comparison: Comparison, them: string): string | null {
  const figures = leftOutFigures(result, comparison);
  if (figures === null) return null;
  const { estimate, limits, change } = figures;
  const words = differenceWords(result.measure, result.column, result.unit);
  const range = limits === null ? '' : ` (${rangeText(limits.lower, limits.upper, { ...words, after: '' })})`;
  const changes =
    change === null ? 'does not change' : change === 'turned' ? 'turns round' : `changes to “${verdictPhrase(change)}”`;
  return `With ${them} in: ${differenceText(estimate, words)}${range}. The finding ${changes}.`;
}
