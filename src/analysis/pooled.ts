import type { Measure, Status } from '../trial/trial.ts';
import type { Analysis, CaveatId, Ceiling, Comparison, Range, Verdict } from './analysis.ts';

/**
 * Several trials of one question put together, format `fairsown-pooled/1`. The order of keys here is the order in the
 * JSON; numbers are unrounded, differences are treatment minus control. Trials stand in the order in which they were
 * sown. With fewer than three nothing is pooled, and what would be is null.
 */
export interface Pooled {
  readonly format: 'fairsown-pooled/1';
  readonly question: string;
  readonly measure: Measure;
  readonly unit: string;
  readonly trials: readonly PooledTrial[];
  readonly estimate: number | null;
  readonly interval: (Range & { readonly level: 0.95; readonly method: 'knapp-hartung' | 'normal' }) | null;
  /** Of no difference; df null where the normal distribution gave the larger p (`guarded`). */
  readonly test: { readonly statistic: number; readonly df: number | null; readonly p: number } | null;
  /** Where the true difference of another trial may lie. */
  readonly prediction: Range | null;
  /** Where the result of another trial may fall. */
  readonly nextResult: Range | null;
  readonly guarded: boolean | null;
  readonly tau2: number | null;
  /** Percent. */
  readonly i2: number | null;
  readonly q: { readonly statistic: number; readonly df: number; readonly p: number } | null;
  /** Together without each trial; none where fewer than three would be left. */
  readonly leaveOneOut: readonly (Range & { readonly trial: string; readonly estimate: number })[];

  readonly verdict: PooledVerdict;
  readonly ceiling: Ceiling;
  /** Smallest difference that matters, as the question states it. */
  readonly matters: number | null;
  /** The whole interval lies within ± `matters`. */
  readonly within: boolean | null;
  /** Heading of the trait; traits only. */
  readonly column: string | null;
  /** Unit of what is compared, of which `unit` is that of the differences: `%` and percentage points. */
  readonly valueUnit: string;
  readonly treatment: Named | null;
  readonly control: Named | null;
  readonly leftOut: readonly LeftOutTrial[];
  readonly unreported: readonly (Told & { readonly status: Exclude<Status, 'finished'> })[];
  readonly software: Analysis['software'];
}

export type PooledVerdict = 'not-pooled' | 'matters' | 'different' | 'unclear';

export interface Named {
  readonly id: string;
  readonly label: string;
}

/** Who asked, and where it can be read. */
export interface Told {
  /** As the question names it: a trial of this site, or the zip of another's. */
  readonly trial: string;
  readonly title: string;
  readonly growers: readonly string[];
  readonly sown: string | null;
  /** Address of the report where it was published on another site; null for a trial of this one, or where none is known. */
  readonly from: string | null;
  /** Verified from the zip of another site. */
  readonly elsewhere: boolean;
}

export interface PooledTrial extends Told {
  /** A lot's id, or "all". */
  readonly lot: string;
  readonly estimate: number;
  /** Half the width of lower to upper, divided by 1.959964. */
  readonly se: number;
  /** The 95 % interval that se is made from: the trial's own or, for one tray of each, that of half the seeds. */
  readonly lower: number;
  readonly upper: number;
  /** Percent; null where nothing is pooled. */
  readonly weight: number | null;

  readonly outcome: string;
  readonly treatment: string;
  readonly control: string;
  readonly crops: readonly string[];
  readonly day: number | null;
  readonly units: Comparison['units'];
  /** What se was made from: `half-seeds` where a treatment had one tray (methods 10). */
  readonly basis: 'interval' | 'half-seeds';
  /** Germination: seeds up and sown under each; null where several lots were put together. */
  readonly seeds: {
    readonly treatment: { readonly count: number; readonly seeds: number };
    readonly control: { readonly count: number; readonly seeds: number };
  } | null;
  /** Its lots could not be put together, so it stands with its first. */
  readonly firstLotOnly: boolean;
  /** What the trial concludes by itself. */
  readonly verdict: Verdict;
  readonly ceiling: Ceiling;
  /** Serious caveats and cautions that pooling does not take away, unlike that of one tray or one batch. */
  readonly doubts: readonly CaveatId[];
  readonly doubtful: 'serious' | 'caution' | null;
}

export interface LeftOutTrial extends Told {
  readonly reason: PoolReason;
  /** What was found in place of what was wanted, where that helps: treatments, a unit. */
  readonly found: string | null;
}

export type PoolReason =
  | 'data-fail'
  | 'other-measure'
  | 'outcome-not-named'
  | 'treatments-differ'
  | 'other-unit'
  | 'several-times'
  | 'no-interval'
  | 'same-records';
