import type { LeftOutReason, UnitKind } from '../analysis.ts';
import type { Sowing } from '../../trial/trial.ts';

/** One look at a sowing: seeds germinated in total up to `day`. */
export interface Check {
  readonly day: number;
  readonly total: number;
}

/** What one sowing brings into an outcome. Checks end at the outcome's day; traits have plants instead. */
export interface Reading {
  readonly sowing: Sowing;
  readonly checks: readonly Check[];
  /** Trait values, one a plant; one for the whole sowing where plants were not measured one by one. */
  readonly plants: readonly number[];
  /** Plants were told apart. */
  readonly toldApart: boolean;
}

/** A sowing that did not enter, and why. */
export interface LeftOut {
  readonly sowing: string;
  readonly reason: LeftOutReason;
  readonly what: string | null;
}

/** The readings of one lot for one outcome, in the order of sowing ids. */
export interface LotReadings {
  readonly lot: string;
  /** Day used for all sowings of the lot; null where nothing was checked. */
  readonly day: number | null;
  readonly readings: readonly Reading[];
  readonly leftOut: readonly LeftOut[];
}

/** What was treated separately: a sowing, or the sowings of one tray or batch taken together. */
export interface Unit {
  readonly kind: Exclude<UnitKind, 'block'>;
  readonly id: string;
  readonly lot: string;
  readonly treatment: string;
  readonly stored: number | null;
  /** Shelf, bench end, shared tray; null where none or where its sowings stand in several. */
  readonly block: string | null;
  readonly spansBlocks: boolean;
  readonly sowings: readonly string[];
  readonly seeds: number | null;
  readonly count: number | null;
  readonly checks: readonly Check[];
  readonly plants: readonly number[];
  readonly toldApart: boolean;
  /** What is compared, in the unit of the outcome; null where it cannot be computed. */
  readonly value: number | null;
}

/** Units of one lot × treatment × storage time. */
export interface UnitGroup {
  readonly lot: string;
  readonly treatment: string;
  readonly stored: number | null;
  readonly units: readonly Unit[];
}
