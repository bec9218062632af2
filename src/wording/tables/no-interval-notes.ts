import type { Comparison } from '../../analysis/analysis.ts';
import type { Words } from '../words.ts';

/** Which effect sizes of these comparisons stand in `numbersTable` without an interval, a sentence each; empty where none does. */
export function noIntervalNotes({ ui }: Words, comparisons: readonly Comparison[]): readonly string[] {
  const some = (has: (effects: Comparison['effects']) => boolean) => comparisons.some(({ effects }) => has(effects));
  return [
    ...(some(({ riskRatio, oddsRatio, cohensH }) => [riskRatio, oddsRatio, cohensH].some((size) => size != null))
      ? [ui['stats.noIntervalShares']]
      : []),
    ...(some(({ hodgesLehmann }) => hodgesLehmann != null) ? [ui['stats.noIntervalShift']] : []),
  ];
}
