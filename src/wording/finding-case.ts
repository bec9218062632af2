import type { Comparison, Range, Result } from '../analysis/analysis.ts';
import { hardlyAny } from '../analysis/hardly-any.ts';

/**
 * Which sentence a comparison gets. The verdict's own name where nothing overrules it; else
 * `no-number` nothing could be computed · `hardly-any` too few seedlings to compare · `small` alike for
 * the purpose although off zero · `likeness-not-agreed`, `small-not-agreed` inside a margin that was not
 * fixed beforehand · `cause-unclear`, `same-cause-unclear` a serious caveat stands in the way.
 */
export type FindingCase =
  | 'no-number'
  | 'hardly-any'
  | 'untestable'
  | 'matters'
  | 'different'
  | 'same'
  | 'small'
  | 'unclear'
  | 'likeness-not-agreed'
  | 'small-not-agreed'
  | 'cause-unclear'
  | 'same-cause-unclear';

/** The case of wording.md's table that a comparison falls under; each later rule needs the earlier ones to have failed. */
export function findingCase(result: Result, comparison: Comparison): FindingCase {
  const { verdict, estimate } = comparison;
  if (estimate === null) return 'no-number';
  if (verdict === 'untestable') return 'untestable';
  if (verdict === 'unclear' && hardlyAny(result, comparison)) return 'hardly-any';
  const causeUnclear = comparison.ceiling === 'cause-unclear';
  const away = offZero(comparison.interval);
  if (verdict === 'same') {
    if (causeUnclear) return away ? 'cause-unclear' : 'same-cause-unclear';
    return away ? 'small' : 'same';
  }
  const notAgreed = wouldCountAsAlike(result, comparison);
  if (verdict === 'unclear') {
    if (!notAgreed) return 'unclear';
    return causeUnclear ? 'same-cause-unclear' : 'likeness-not-agreed';
  }
  if (causeUnclear) return 'cause-unclear';
  return verdict === 'different' && notAgreed ? 'small-not-agreed' : verdict;
}

/** All that `same` asks for, except that the margin was not fixed before the first count. */
function wouldCountAsAlike({ measure }: Result, { equivalence, units, interval }: Comparison): boolean {
  const neverAlike = interval?.method === 'welch-bracket' && (measure === 'mgt' || measure === 'spread');
  const enough = Math.min(units.treatment, units.control) >= 3;
  return equivalence !== null && equivalence.shown && !equivalence.fixedBeforehand && enough && !neverAlike;
}

const offZero = (range: Range | null) =>
  range !== null && ((range.lower !== null && range.lower > 0) || (range.upper !== null && range.upper < 0));
