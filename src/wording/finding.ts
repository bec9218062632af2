import type { Analysis, Caveat, Comparison, Group, Range, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { amount, type Amount } from './amount.ts';
import { caveatsOf } from './caveats-of.ts';
import { digitsFor } from './digits-for.ts';

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

/** Everything a result sentence needs, chosen and rounded; a language only fills its template. */
export interface Facts {
  readonly case: FindingCase;
  /** Say "probably", and why. */
  readonly probably: boolean;
  /** Caveats that set the ceiling; those that make a trial untestable by themselves are not repeated. */
  readonly reasons: readonly Caveat[];
  readonly estimate: Amount | null;
  /** The limits to print; null where no interval could be computed. */
  readonly limits: { readonly lower: Amount; readonly upper: Amount } | null;
  /** Likeness is judged by the narrower interval; named as such where the ordinary one reaches beyond the margin. */
  readonly judgedByNarrower: boolean;
  readonly margin: number | null;
  readonly marginFixed: boolean;
  /** The interval lies inside the margin, yet likeness may not be claimed, and this is why. */
  readonly likenessHeldBack: 'few-units' | 'coarse' | null;
  /** Date on which the margin was fixed, and who says so; null where it was not. */
  readonly marginDate: { readonly date: string; readonly stated: boolean } | null;
  readonly units: Comparison['units'];
  readonly groups: { readonly treatment: Group | null; readonly control: Group | null };
  /** Nearly everything came up in both. */
  readonly noRoom: boolean;
  /** The checks lay too far apart to say how long a lag is. */
  readonly coarse: boolean;
  readonly settle: Comparison['wouldSettle'];
  readonly digits: number;
}

/** Chooses the sentence for one comparison (wording.md, "Result of a comparison") and rounds its numbers. */
export function finding(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): Facts {
  const caveats = caveatsOf(analysis, result, comparison);
  const margin = comparison.equivalence?.margin ?? result.matters;
  const marginDate = dateOfMargin(trial);
  const range = rangeToPrint(comparison, margin);
  const span = range ? range.upper - range.lower : Math.abs(comparison.estimate ?? 0);
  const digits = digitsFor(result.measure, result.unit, span);
  const chosen = caseOf(result, comparison, caveats);
  const untestable = chosen === 'untestable' || chosen === 'no-number';
  const round = (value: number) => amount(value, digits, margin);
  return {
    case: chosen,
    probably: comparison.ceiling === 'probably',
    reasons: comparison.ceilingFrom
      .filter((id) => !(untestable && (id === 'one-sowing' || id === 'one-batch')))
      .flatMap((id) => caveats.find((caveat) => caveat.id === id) ?? []),
    estimate: comparison.estimate === null ? null : round(comparison.estimate),
    limits: range && { lower: round(range.lower), upper: round(range.upper) },
    judgedByNarrower: range?.narrower ?? false,
    margin,
    marginFixed: comparison.equivalence?.fixedBeforehand ?? marginDate !== null,
    likenessHeldBack: heldBack(comparison),
    marginDate,
    units: comparison.units,
    groups: {
      treatment: groupOf(result, comparison.lot, comparison.treatment),
      control: groupOf(result, comparison.lot, comparison.control),
    },
    noRoom: caveats.some(({ id }) => id === 'no-room'),
    coarse: comparison.interval?.method === 'welch-bracket',
    settle: settles(comparison),
    digits,
  };
}

function caseOf(result: Result, comparison: Comparison, caveats: readonly Caveat[]): FindingCase {
  const { verdict, ceiling, equivalence, interval, estimate } = comparison;
  if (estimate === null) return 'no-number';
  if (verdict === 'untestable') return 'untestable';
  const hardlyAny = caveats.some(({ id }) => id === 'hardly-any');
  if (verdict === 'unclear' && hardlyAny && result.measure === 'germination') return 'hardly-any';
  const notAgreed = equivalence !== null && equivalence.shown && !equivalence.fixedBeforehand;
  const causeUnclear = ceiling === 'cause-unclear';
  if (verdict === 'same') {
    if (causeUnclear) return 'same-cause-unclear';
    return interval !== null && offZero(interval) ? 'small' : 'same';
  }
  if (verdict === 'unclear') {
    if (!notAgreed) return 'unclear';
    return causeUnclear ? 'same-cause-unclear' : 'likeness-not-agreed';
  }
  if (causeUnclear) return 'cause-unclear';
  return verdict === 'different' && notAgreed ? 'small-not-agreed' : verdict;
}

function heldBack({ equivalence, interval, verdict, units }: Comparison): Facts['likenessHeldBack'] {
  if (!equivalence?.shown || !equivalence.fixedBeforehand || verdict === 'same') return null;
  if (interval?.method === 'welch-bracket') return 'coarse';
  return Math.min(units.treatment, units.control) < 3 ? 'few-units' : null;
}

const offZero = ({ lower, upper }: Range) => (lower !== null && lower > 0) || (upper !== null && upper < 0);

/**
 * The ordinary (95 %) interval; for a likeness the narrower (90 %) one that the verdict rests on, where
 * the ordinary one reaches beyond the margin and would seem to contradict the sentence.
 */
function rangeToPrint({ interval, equivalence, verdict }: Comparison, margin: number | null) {
  const alike = verdict === 'same' || (equivalence?.shown === true && !equivalence.fixedBeforehand);
  const whole = complete(interval);
  const narrow = complete(equivalence?.interval ?? null);
  if (alike && narrow && margin !== null && (whole === null || whole.lower < -margin || whole.upper > margin)) {
    return { ...narrow, narrower: true };
  }
  return whole && { ...whole, narrower: false };
}

function complete(range: Range | null): { lower: number; upper: number } | null {
  if (range === null || range.lower === null || range.upper === null) return null;
  return { lower: range.lower, upper: range.upper };
}

function dateOfMargin(trial: Trial): Facts['marginDate'] {
  if (trial.plan !== null) return { date: trial.plan.fixed, stated: false };
  return trial.fixedBeforehand === null ? null : { date: trial.fixedBeforehand, stated: true };
}

const groupOf = (result: Result, lot: string, treatment: string) =>
  result.groups.find((group) => group.lot === lot && group.treatment === treatment) ?? null;

/** A number of units no larger than those already there would settle nothing; then it is not said. */
function settles({ wouldSettle, units }: Comparison): Comparison['wouldSettle'] {
  return wouldSettle !== null && wouldSettle.units > Math.min(units.treatment, units.control) ? wouldSettle : null;
}
