import type { CaveatId, Ceiling, Comparison, UnitKind } from './analysis.ts';

/** Germination of one treatment over storage time (methods 9): probit = ki + slope × years. */
export interface SurvivalLine {
  readonly lot: string;
  readonly treatment: string;
  /** Probits at the start; null, like all below, where no line can be fitted. */
  readonly ki: number | null;
  /** Probits a year. */
  readonly slope: number | null;
  /** Years in which germination falls by one probit: −1 / slope; null where it does not fall. */
  readonly sigma: number | null;
  /** Only where the line is at half within the tested times, and its slope is told from none. */
  readonly halfLife: {
    readonly estimate: number;
    readonly lower: number | null;
    readonly upper: number | null;
    readonly unit: 'years';
  } | null;
  readonly dispersion: Comparison['dispersion'];
  /** Standard errors, √φ* in them. */
  readonly se: { readonly ki: number; readonly slope: number } | null;
  /** Why there is no half-life, or no line. */
  readonly reason: NoHalfLife | null;
  readonly unit: UnitKind;
  readonly units: number;
  /** Storage times tested, years; what came up at each, %. */
  readonly tests: readonly { readonly stored: number; readonly estimate: number | null }[];
}

/**
 * `too-few-tests`: fewer than three times (or a unit too few for a line); `too-steep`: all or none came up at all
 * but one of them; `no-fall`: the line does not fall; `hardly-a-fall`: nearly all still came up; `nothing-came-up`;
 * `not-settled`: no fit. With a line: `not-yet` and `before-first`: half lies after, or before, the tested times;
 * `unbounded`: the slope is not told from none (Fieller's g is 1 or more).
 */
export type NoHalfLife =
  | 'too-few-tests'
  | 'too-steep'
  | 'no-fall'
  | 'hardly-a-fall'
  | 'nothing-came-up'
  | 'not-settled'
  | 'not-yet'
  | 'before-first'
  | 'unbounded';

/** Do the survival lines of a lot have one slope; does one line do for all? Null where that cannot be tested. */
export interface LineComparison {
  readonly lot: string;
  readonly test: 'common-slope' | 'common-line';
  readonly statistic: number | null;
  readonly df: readonly [number, number] | null;
  readonly p: number | null;
  /** For the number of lots (Holm). */
  readonly pAdjusted: number | null;
  /** Dispersion of the fit with a line each. */
  readonly dispersion: Comparison['dispersion'];
  readonly ceiling: Ceiling;
  readonly ceilingFrom: readonly CaveatId[];
}
