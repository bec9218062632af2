import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Chart } from '../charts/chart.ts';
import { differences } from '../charts/differences.ts';
import { germinationCurves } from '../charts/germination-curves.ts';
import { lotCurves } from '../charts/lot-curves.ts';
import { survival } from '../charts/survival.ts';
import { trait } from '../charts/trait.ts';
import { units } from '../charts/units.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';

/**
 * The chart of one kind (`chartKinds`) of one outcome, of one lot or of several side by side.
 *
 * @param lots at least one; survival is drawn of one only
 */
export function outcomeChart(
  words: Words,
  trial: Trial,
  analysis: Analysis,
  result: Result,
  kind: string,
  lots: readonly string[],
): Chart {
  const [lot = ''] = lots;
  switch (kind) {
    case 'differences':
      return differences(trial, analysis, result, words);
    case 'germination':
      return lots.length > 1
        ? lotCurves(trial, analysis, result, lots, words)
        : curvesOf(words, trial, analysis, result, lot);
    case 'survival':
      return survival(trial, analysis, result, lot, words);
    case 'trait':
      return trait(trial, analysis, result, lots, words);
    default:
      return units(trial, analysis, result, lots, words);
  }
}

function curvesOf(words: Words, trial: Trial, analysis: Analysis, result: Result, lot: string): Chart {
  const stored = result.groups.find((group) => group.lot === lot)?.stored ?? null;
  return germinationCurves(trial, analysis, result, lot, words, stored);
}
