import type { LeftOutReason, PlanChange, UnitKind, Verdict } from '../analysis.ts';
import type { NoHalfLife, SurvivalLine } from '../survival-line.ts';
import type { Assignment, YesNo } from '../../trial/trial.ts';

/**
 * What each caveat carries in `evidence`: everything a sentence about it needs. Treatments and lots are
 * ids (labels stand in the trial), percentages run 0 to 100, dates are ISO, days count from sowing.
 * `treatment` and `control` name the two sides of the comparison that the caveat is about; a caveat on
 * a comparison also has its treatment in `Caveat.treatment`. `Caveat.lot` "all" is the pooled
 * comparison alone; null is every lot.
 */
export interface Evidence {
  // — serious —
  /** Units that entered the analysis and sowings that were sown, of each. */
  readonly 'one-sowing': Sides & { readonly unit: UnitKind; readonly units: Pair<number>; readonly sown: Pair<number> };
  /** `treatment` was given to all its `sowings` sowings in one go (at the storage time `stored`, years). */
  readonly 'one-batch': {
    readonly treatment: string;
    readonly because: 'one-batch-named' | 'treated-at-once';
    readonly batch: string | null;
    readonly sowings: number;
    readonly stored: number | null;
  };
  /** Texts of `position` ("lower shelf"). */
  readonly 'confounded-place': Apart<string>;
  /** Texts of `block`. */
  readonly 'confounded-block': Apart<string>;
  /** Rows or columns of positions such as `2-3`. */
  readonly 'confounded-position': Apart<string> & { readonly by: 'row' | 'column' };
  readonly 'confounded-scorer': Apart<string>;
  /** ISO dates. */
  readonly 'confounded-sowing-day': Apart<string>;
  /** Days of the last check. */
  readonly 'confounded-count-day': Apart<number>;
  /** Hours, shortest and longest over the sowings; null: not recorded. */
  readonly 'unequal-soak': Sides & {
    readonly hours: Pair<{ readonly shortest: number; readonly longest: number } | null>;
  };
  /** Care that touched `touched` of the `of` sowings of each. */
  readonly 'unequal-handling': Sides & {
    readonly what: string;
    readonly day: number | null;
    readonly date: string | null;
    readonly touched: Pair<number>;
    readonly of: Pair<number>;
  };
  /** Checks that some sowings had and these missed; `days`: on which any sowing of each was checked. */
  readonly 'checked-on-different-days': Sides & {
    readonly days: Pair<readonly number[]>;
    readonly missed: readonly {
      readonly sowing: string;
      readonly treatment: string;
      readonly days: readonly number[];
    }[];
  };

  // — caution —
  readonly 'not-randomised': { readonly assignment: Assignment };
  /** Sowings of each at each place, row or column; `chance`: share of random layouts at least as uneven. */
  readonly 'positions-unbalanced': Sides & {
    readonly by: 'place' | 'row' | 'column';
    readonly places: readonly { readonly place: string; readonly treatment: number; readonly control: number }[];
    readonly chance: number | null;
  };
  /** `in-batches`: said, but which sowings share a batch is not; `unknown`: nothing said. */
  readonly 'batch-unknown': { readonly treated: 'in-batches' | 'unknown'; readonly treatments: readonly string[] };
  readonly 'outcomes-not-fixed': {
    readonly reason: 'none-listed' | 'nothing-fixed' | 'fixed-too-late' | 'plan-edited' | 'not-in-plan';
    /** Date of the plan or statement, date of the first count. */
    readonly fixed: string | null;
    readonly firstCount: string | null;
  };
  readonly 'plan-changed': { readonly changes: readonly PlanChange[] };
  /** The last check, `from` one day `to` the next, added `added` of `seeds` seeds. */
  readonly 'still-germinating': {
    readonly added: number;
    readonly seeds: number;
    readonly percent: number;
    readonly from: number;
    readonly to: number;
  };
  /** `verdicts`: of each comparison touched, as it is and with them in (null where that was not computed). */
  readonly 'sowings-left-out': {
    readonly sowings: readonly {
      readonly sowing: string;
      readonly reason: LeftOutReason;
      readonly what: string | null;
    }[];
    readonly verdicts: readonly {
      readonly treatment: string;
      readonly verdict: Verdict;
      readonly withThem: Verdict | null;
    }[];
  };
  readonly 'many-comparisons': { readonly comparisons: number; readonly p: number; readonly pAdjusted: number };
  /** Dispersions, and their ratio (null where the smaller is zero) above the F quantile `limit`. */
  readonly 'unequal-spread': {
    readonly wider: string;
    readonly narrower: string;
    readonly phi: { readonly wider: number; readonly narrower: number };
    readonly ratio: number | null;
    readonly limit: number;
  };
  /** Seeds of the largest and the smallest unit. */
  readonly 'unequal-trays': Sides & { readonly largest: number; readonly smallest: number; readonly unit: UnitKind };
  /** `incomplete`: blocks that do not hold both; `without`: sowings with no block named. */
  readonly 'incomplete-blocks': Sides & {
    readonly reason: 'two-blocks' | 'incomplete' | 'some-without-block';
    readonly blocks: readonly string[];
    readonly incomplete: readonly string[];
    readonly without: readonly string[];
  };
  readonly 'seeds-by-mass': { readonly sowings: readonly string[]; readonly seedsPerGram: number | null };
  readonly 'no-seed-number': { readonly sowings: readonly string[] };

  // — note —
  readonly 'few-units': Sides & { readonly unit: UnitKind; readonly units: Pair<number> };
  /** Seeds of the treatment named in the caveat. */
  readonly 'few-seeds': { readonly seeds: number };
  readonly 'not-blind': { readonly blind: YesNo };
  readonly 'no-margin': { readonly unit: string };
  /** Over-dispersed (`phi`, else null) or, where it is not, ranges of units beyond what luck gives. */
  readonly 'more-varied-than-luck': {
    readonly phi: number | null;
    readonly df: number | null;
    readonly p: number | null;
    readonly ranges: readonly {
      readonly treatment: string;
      readonly stored: number | null;
      /** Percentages of the units, and the widest range that luck alone would give. */
      readonly lowest: number;
      readonly highest: number;
      readonly range: number;
      readonly limit: number;
      readonly rule: 'table' | 'formula';
    }[];
  };
  readonly 'more-alike-than-luck': { readonly phi: number; readonly df: number; readonly p: number };
  /** Percentage of the treatment named in the caveat (at the storage time `stored`, years), close to `limit`. */
  readonly 'near-limit': {
    readonly stored: number | null;
    readonly estimate: number;
    readonly limit: 0 | 100;
    readonly germinated: number;
    readonly seeds: number;
  };
  readonly 'hardly-any': Sides & { readonly germinated: Pair<number>; readonly seeds: Pair<number> };
  /** The lowest percentage of any unit of either. */
  readonly 'no-room': Sides & { readonly lowest: number; readonly estimates: Pair<number> };
  /** Of all that came up in the treatment named, `percent` did between the checks of day `from` and day `to`. */
  readonly 'coarse-checks': { readonly from: number; readonly to: number; readonly percent: number };
  /** The value that every unit of each has; or, with `difference`, the difference that every block has. */
  readonly 'coarse-readings': Sides & {
    readonly values: Pair<number>;
    readonly difference: number | null;
    readonly unit: string;
  };
  readonly 'lots-differ': {
    readonly p: number;
    readonly estimates: readonly { readonly lot: string; readonly estimate: number }[];
    readonly unit: string;
  };
  readonly 'ungerminated-not-sorted': { readonly ungerminated: number; readonly seeds: number };
  /** `varies`: trial.yaml says that storage is what varies; `question`: the question speaks of storing or keeping. */
  readonly 'tested-straight-away': { readonly because: 'varies' | 'question' };
  readonly 'start-moisture-unknown': { readonly treatments: readonly string[] };
  /** Recorded differences; `varies` stands for what the question changes where no key records it. */
  readonly 'two-changes': Sides & {
    readonly changes: readonly {
      readonly what: 'soak' | 'temperature' | 'moisture' | 'varies';
      readonly treatment: number | string | null;
      readonly control: number | null;
    }[];
  };
  /** Plants measured, of seeds sown. */
  readonly 'survivors-only': {
    readonly groups: readonly { readonly treatment: string; readonly plants: number; readonly seeds: number }[];
  };
  readonly 'one-lot': { readonly lot: string; readonly crop: string };
  /** `batches`: ids of batches whose sowings stand in several blocks, which are therefore ignored. */
  readonly 'batches-span-blocks': {
    readonly batches: readonly { readonly treatment: string; readonly batch: string }[];
  };
  /** `portion` of what came up (½; ¼ for spread) was up at the first check, on `day`, in these units. */
  readonly 'half-before-first-check': {
    readonly day: number;
    readonly portion: number;
    readonly units: readonly string[];
  };
  /** None of `seeds` seeds in `sowings` sowings of the treatment named came up. */
  readonly 'nothing-came-up': { readonly seeds: number | null; readonly sowings: number };
  /** Storage times tested, years, and what came up at each, %, of the treatment named. */
  readonly 'no-half-life': { readonly reason: NoHalfLife; readonly tests: SurvivalLine['tests'] };
}

interface Sides {
  readonly treatment: string;
  readonly control: string;
}

export interface Pair<T> {
  readonly treatment: T;
  readonly control: T;
}

/** Values that only the treatment has and values that only the control has; none is shared. */
export type Apart<T> = Sides & { readonly values: Pair<readonly T[]> };
