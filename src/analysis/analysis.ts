import type { Input, Measure } from '../trial/trial.ts';
import type { LineComparison, SurvivalLine } from './survival-line.ts';

/**
 * The analysis of one trial, format `fairsown-analysis/1`. The order of keys here is the order in the
 * JSON. Numbers are unrounded; percentages run 0 to 100 and differences are percentage points.
 * A value that cannot be computed is null and a caveat says why. A null in `lot` or `treatment` of a
 * caveat means all of them.
 */
export interface Analysis {
  readonly format: 'fairsown-analysis/1';
  readonly trial: string;
  readonly inputs: readonly Input[];
  readonly results: readonly Result[];
  readonly moisture: readonly Moisture[];
  readonly caveats: readonly Caveat[];
  readonly plan: { readonly fixed: string | null; readonly changes: readonly PlanChange[] };
  readonly software: { readonly name: 'fairsown'; readonly version: string };
}

export interface Result {
  readonly outcome: string;
  readonly measure: Measure;
  readonly primary: boolean;
  /** Day of the outcome; null for times and where it differs by lot (then `days`). */
  readonly day: number | null;
  /**
   * Unit of the estimates. Moisture: `% wet basis`, or `% of mass lost` where the moisture of some batch is
   * not known and the water lost is compared instead (then more is drier).
   */
  readonly unit: string;
  readonly groups: readonly Group[];
  /** Measure `storage` only, where `comparisons` is empty: a survival line a treatment, and the lines compared. */
  readonly storage?: readonly SurvivalLine[];
  readonly lines?: readonly LineComparison[];
  readonly comparisons: readonly Comparison[];
  /** Day actually used for each lot, by lot id. */
  readonly days: Readonly<Record<string, number>>;
  /** Heading in measurements.csv; traits only. */
  readonly column: string | null;
  readonly matters: number | null;
  /** One row a unit that entered the analysis: what the charts draw and the R script reads. */
  readonly values: readonly UnitValue[];
  /** Sowings that did not enter this outcome, with the reason. */
  readonly leftOut: readonly {
    readonly sowing: string;
    readonly reason: LeftOutReason;
    readonly what: string | null;
  }[];
  /** One-way F over all treatments of a lot where there are more than two; means only. */
  readonly overall: readonly {
    readonly lot: string;
    readonly statistic: number;
    readonly df: readonly [number, number];
    readonly p: number;
  }[];
}

export type LeftOutReason = 'deviation' | 'not-checked' | 'nothing-germinated' | 'not-measured' | 'no-seed-number';
export type UnitKind = 'sowing' | 'tray' | 'batch' | 'block';

export interface UnitValue {
  readonly lot: string;
  readonly treatment: string;
  readonly stored: number | null;
  readonly block: string | null;
  /** Id of the sowing, tray or batch. */
  readonly unit: string;
  readonly sowings: readonly string[];
  readonly seeds: number | null;
  readonly count: number | null;
  /** %, days or the trait's unit. */
  readonly value: number | null;
  /** Plants measured (traits) or seeds germinated (times). */
  readonly plants: number | null;
}

export interface Range {
  readonly lower: number | null;
  readonly upper: number | null;
}
export interface Interval extends Range {
  readonly level: number;
  readonly method: IntervalMethod;
}
export type IntervalMethod =
  | 'wilson-effective'
  | 'wilson-seeds-only'
  | 'newcombe-effective'
  | 'newcombe-seeds-only'
  | 'newcombe-blocks'
  | 'mantel-haenszel'
  | 'welch'
  | 'welch-bracket'
  | 'paired'
  | 'pooled-means'
  | 'fieller';

export interface Group {
  readonly lot: string;
  readonly treatment: string;
  readonly stored: number | null;
  readonly unit: UnitKind;
  readonly units: number;
  readonly sowings: number;
  readonly seeds: number | null;
  readonly count: number | null;
  readonly estimate: number | null;
  readonly sd: number | null;
  readonly interval: Interval | null;
  /** T50, mgt, spread: last check before and first check at or after half, days. */
  readonly bracket: { readonly after: number | null; readonly by: number | null } | null;
  /** Plants measured; between-plant correlation within units where plants are told apart. */
  readonly plants: number | null;
  readonly icc: number | null;
  /** Traits: sd of plants within their units, in the trait's unit; with one unit the only spread there is. */
  readonly plantSd: number | null;
}

export type Verdict = 'untestable' | 'same' | 'matters' | 'different' | 'unclear';
export type Ceiling = 'none' | 'probably' | 'cause-unclear';

export interface Comparison {
  /** A lot's id, or "all": pooled over lots. */
  readonly lot: string;
  readonly treatment: string;
  readonly control: string;
  /** Storage time of both groups in years; null outside a storage series. */
  readonly stored: number | null;
  readonly estimate: number | null;
  readonly unit: string;
  readonly interval: Interval | null;
  readonly effects: Effects;
  readonly dispersion: {
    readonly phi: number | null;
    readonly df: number;
    readonly used: number;
    readonly dfUsed: number;
  } | null;
  readonly test: Test | null;
  readonly permutation: { readonly arrangements: number; readonly exact: boolean; readonly p: number } | null;
  readonly equivalence: {
    readonly margin: number;
    readonly fixedBeforehand: boolean;
    readonly interval: Range & { readonly level: number };
    readonly shown: boolean;
  } | null;
  /** One unit a treatment: the correlation at which the interval first takes in zero. */
  readonly tipping: { readonly rho: number | null; readonly note: 'already' | 'never' | null } | null;
  /** The same comparison with the left-out sowings in (for a missed check: with the last earlier count). */
  readonly withLeftOut: {
    readonly sowings: readonly string[];
    readonly estimate: number | null;
    readonly interval: (Range & { readonly level: number }) | null;
    readonly verdict: Verdict;
  } | null;
  readonly detectable: number | null;
  readonly verdict: Verdict;
  readonly ceiling: Ceiling;
  readonly ceilingFrom: readonly CaveatId[];
  /** T50, mgt, spread: what the gaps between checks allow, days. */
  readonly bracket: Range | null;
  /** Coarse checks: Welch's own interval, which `different` uses (methods 5). */
  readonly welch: (Range & { readonly level: number }) | null;
  /** Units of each treatment that would show `difference` (methods 7, 11); null where it cannot be said. */
  readonly wouldSettle: { readonly units: number; readonly difference: number } | null;
  /** Untestable: units of each treatment for a repeat, planned with φ = 2 and the margin, or 10 points where none was given. */
  readonly repeatWith: { readonly units: number; readonly difference: number } | null;
  /** Pooled over lots: do the lots differ in their difference? */
  readonly lotsDiffer: {
    readonly statistic: number;
    readonly df: readonly [number, number];
    readonly p: number;
  } | null;
  /** Lots that entered a pooled comparison. */
  readonly lots: readonly string[] | null;
  /** Half a count was added to all four cells of the odds ratio because one was zero. */
  readonly halfAdded: boolean;
  readonly units: { readonly treatment: number; readonly control: number; readonly kind: UnitKind };
}

export interface Effects {
  readonly riskRatio?: number | null;
  readonly oddsRatio?: number | null;
  readonly cohensH?: number | null;
  readonly hedgesG?: {
    readonly estimate: number | null;
    readonly lower: number | null;
    readonly upper: number | null;
  } | null;
  readonly hodgesLehmann?: number | null;
}

export interface Test {
  readonly method: 'score-f' | 'score-f-blocks' | 'welch-t' | 'paired-t' | 'pooled-t' | 'pooled-f';
  readonly statistic: number;
  readonly df: readonly [number, number] | number;
  readonly p: number;
  readonly pAdjusted: number | null;
}

export interface Moisture {
  readonly lot: string;
  readonly treatment: string | null;
  /** % of the seed's initial mass. */
  readonly waterLost: number | null;
  readonly moistureBefore: number | null;
  readonly moistureAfter: number | null;
  /** What the scale's steps allow for waterLost. */
  readonly waterLostRange: Range | null;
  readonly moistureAfterRange: Range | null;
  readonly batch: string | null;
  readonly repeat: string | null;
}

export type Weight = 'note' | 'caution' | 'serious';
export type CaveatId =
  | 'one-sowing'
  | 'one-batch'
  | 'confounded-place'
  | 'confounded-block'
  | 'confounded-position'
  | 'confounded-scorer'
  | 'confounded-sowing-day'
  | 'confounded-count-day'
  | 'unequal-soak'
  | 'unequal-handling'
  | 'checked-on-different-days'
  | 'not-randomised'
  | 'positions-unbalanced'
  | 'batch-unknown'
  | 'outcomes-not-fixed'
  | 'plan-changed'
  | 'still-germinating'
  | 'sowings-left-out'
  | 'many-comparisons'
  | 'unequal-spread'
  | 'unequal-trays'
  | 'incomplete-blocks'
  | 'seeds-by-mass'
  | 'few-units'
  | 'few-seeds'
  | 'not-blind'
  | 'no-margin'
  | 'more-varied-than-luck'
  | 'more-alike-than-luck'
  | 'near-limit'
  | 'hardly-any'
  | 'no-room'
  | 'coarse-checks'
  | 'coarse-readings'
  | 'lots-differ'
  | 'ungerminated-not-sorted'
  | 'tested-straight-away'
  | 'start-moisture-unknown'
  | 'two-changes'
  | 'survivors-only'
  | 'one-lot'
  | 'batches-span-blocks'
  | 'half-before-first-check'
  | 'no-seed-number'
  | 'nothing-came-up'
  | 'no-half-life';

/** Null in outcome, lot, treatment: the whole trial. `text` is empty until src/wording fills it in. */
export interface Caveat {
  readonly id: CaveatId;
  readonly weight: Weight;
  readonly text: string;
  readonly outcome: string | null;
  readonly lot: string | null;
  readonly treatment: string | null;
  /** What tripped the rule, as plain values: numbers, ids, labels. */
  readonly evidence: Readonly<Record<string, unknown>>;
}

/** One difference between plan.yaml and what was done. */
export interface PlanChange {
  /** Path in plan.yaml: `outcomes.germination.day`. */
  readonly what: string;
  readonly planned: string | null;
  readonly done: string | null;
}
