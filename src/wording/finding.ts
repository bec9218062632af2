import type { Analysis, Caveat, Comparison, Group, Range, Result } from '../analysis/analysis.ts';
import { appliesTo } from '../analysis/caveats/applies-to.ts';
import { fixedBeforehand } from '../analysis/fixed-beforehand.ts';
import { fixedOn } from '../analysis/fixed-on.ts';
import type { Trial } from '../trial/trial.ts';
import { amount, type Amount } from './amount.ts';
import { digitsFor } from './digits-for.ts';
import { findingCase, type FindingCase } from './finding-case.ts';
import { groupsOf } from '../analysis/groups-of.ts';

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
  /** Date on which the margin was fixed, and whether only its authors say so; null where it was not. */
  readonly marginDate: { readonly date: string; readonly stated: boolean } | null;
  /** The interval lies inside the agreed margin, yet likeness may not be claimed, and this is why. */
  readonly likenessHeldBack: 'few-units' | 'coarse' | null;
  readonly units: Comparison['units'];
  readonly groups: { readonly treatment: Group | null; readonly control: Group | null };
  /** Nearly everything came up in both. */
  readonly noRoom: boolean;
  /** The checks lay too far apart to say how long a lag is. A spread is judged by the whole of what they allow. */
  readonly coarse: boolean;
  /** The share that was up at the first check already in one of the units, which then has no such time; else null. */
  readonly early: 0.25 | 0.5 | null;
  /** Units of each that would settle it (untestable: that would make it a trial). */
  readonly settle: Comparison['wouldSettle'];
  readonly digits: number;
}

/** Chooses the sentence for one comparison (wording.md, "Result of a comparison") and rounds its numbers. */
export function finding(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): Facts {
  const caveats = analysis.caveats.filter((caveat) => appliesTo(caveat, result, comparison));
  // Not `appliesTo`: the caveat stands on a group, and on the control's as well.
  const early = analysis.caveats.find(
    ({ id, outcome, lot, treatment }) =>
      id === 'half-before-first-check' &&
      outcome === result.outcome &&
      (lot === comparison.lot || comparison.lot === 'all') &&
      (treatment === comparison.treatment || treatment === comparison.control),
  );
  const margin = comparison.equivalence?.margin ?? result.matters;
  const fixing = fixedOn(trial);
  const chosen = findingCase(result, comparison);
  const range = rangeToPrint(comparison, chosen, margin);
  const span = range ? range.upper - range.lower : Math.abs(comparison.estimate ?? 0);
  const digits = digitsFor(result.measure, result.unit, span);
  const alone = chosen === 'untestable' || chosen === 'no-number';
  const round = (value: number) => amount(value, digits, margin);
  return {
    case: chosen,
    probably: comparison.ceiling === 'probably',
    reasons: comparison.ceilingFrom
      .filter((id) => !(alone && (id === 'one-sowing' || id === 'one-batch')))
      .flatMap((id) => caveats.find((caveat) => caveat.id === id) ?? []),
    estimate: comparison.estimate === null ? null : round(comparison.estimate),
    limits: range && { lower: round(range.lower), upper: round(range.upper) },
    judgedByNarrower: range?.narrower ?? false,
    margin,
    marginFixed: comparison.equivalence?.fixedBeforehand ?? fixedBeforehand(trial, { id: result.outcome }),
    marginDate: fixing && { date: fixing.date, stated: fixing.how === 'stated' },
    likenessHeldBack: heldBack(comparison),
    units: comparison.units,
    groups: groupsOf(result, comparison),
    noRoom: caveats.some(({ id }) => id === 'no-room'),
    coarse: comparison.interval?.method === 'welch-bracket' && result.measure !== 'spread',
    early: early === undefined ? null : result.measure === 't50' ? 0.5 : 0.25,
    settle: alone ? comparison.repeatWith : settles(comparison),
    digits,
  };
}

/**
 * The ordinary (95 %) interval; for a likeness the narrower (90 %) one that the verdict rests on, where
 * the ordinary one reaches beyond the margin and would seem to contradict the sentence.
 */
function rangeToPrint({ interval, equivalence }: Comparison, chosen: FindingCase, margin: number | null) {
  const whole = complete(interval);
  const narrow = complete(equivalence?.interval ?? null);
  const beyond = margin !== null && (whole === null || whole.lower < -margin || whole.upper > margin);
  if (LIKENESS.includes(chosen) && narrow && beyond) return { ...narrow, narrower: true };
  return whole && { ...whole, narrower: false };
}

const LIKENESS: readonly FindingCase[] = [
  'same',
  'small',
  'likeness-not-agreed',
  'small-not-agreed',
  'same-cause-unclear',
];

function complete(range: Range | null): { lower: number; upper: number } | null {
  if (range === null || range.lower === null || range.upper === null) return null;
  return { lower: range.lower, upper: range.upper };
}

function heldBack({ equivalence, interval, verdict, units }: Comparison): Facts['likenessHeldBack'] {
  if (!equivalence?.fixedBeforehand || verdict === 'same') return null;
  const range = complete(interval);
  if (range === null || range.lower < -equivalence.margin || range.upper > equivalence.margin) return null;
  if (Math.min(units.treatment, units.control) < 3) return 'few-units';
  return interval?.method === 'welch-bracket' ? 'coarse' : null;
}

/** A number of units no larger than those already there would settle nothing; then it is not said. */
function settles({ wouldSettle, units }: Comparison): Comparison['wouldSettle'] {
  return wouldSettle !== null && wouldSettle.units > Math.max(units.treatment, units.control) ? wouldSettle : null;
}
