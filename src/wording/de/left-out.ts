import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { leftOutFigures } from '../left-out-figures.ts';
import { leftOutOf } from '../left-out-of.ts';
import { differenceText } from './difference-text.ts';
import { differenceWords } from './difference-words.ts';
import { formOf } from './form-of.ts';
import { leftOutReason } from './left-out-reason.ts';
import { list } from './list.ts';
import type { Noun } from './noun.ts';
import { rangeText } from './range-text.ts';
import { unitNoun } from './unit-noun.ts';
import { verdictPhrase } from './verdict-phrase.ts';

/** "Schale T7 (umgestoßen) wurde weggelassen.", "Mit allen Schalen: 9 mehr je 100 (…). Das Ergebnis ändert sich nicht." */
export function leftOut(trial: Trial, result: Result, comparison: Comparison): readonly string[] {
  const out = leftOutOf(trial, result, comparison);
  if (out.length === 0) return [];
  const tray = unitNoun(trial, 'sowing');
  const named = list(out.map(({ sowing, reason, what }) => `${sowing} (${what ?? leftOutReason(reason)})`));
  const first = `${formOf(tray, out.length)} ${named} ${out.length === 1 ? 'wurde' : 'wurden'} weggelassen.`;
  const second = withAll(result, comparison, tray);
  return second === null ? [first] : [first, second];
}

function withAll(result: Result, comparison: Comparison, tray: Noun): string | null {
  const figures = leftOutFigures(result, comparison);
  if (figures === null) return null;
  const { estimate, limits, change } = figures;
  const words = differenceWords(result.measure, result.column, result.unit);
  const range = limits === null ? '' : ` (${rangeText(limits.lower, limits.upper, { ...words, after: '' })})`;
  const changes =
    change === null
      ? 'ändert sich nicht'
      : change === 'turned'
        ? 'kehrt sich um'
        : `ändert sich zu „${verdictPhrase(change)}“`;
  return `Mit allen ${formOf(tray, 2, 'dative')}: ${differenceText(estimate, words)}${range}. Das Ergebnis ${changes}.`;
}
