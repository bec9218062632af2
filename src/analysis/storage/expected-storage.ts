import { normalQuantile } from '../../statistics/distributions/normal.ts';
import { viabilityPeriod } from '../../statistics/storage/viability-period.ts';
import { isOfKind } from '../../trial/is-of-kind.ts';
import { NOT_DRIED } from './not-dried.ts';
import { VIABILITY_CROPS, type Span, type ViabilityCrop } from './viability-crops.ts';

export interface StorageQuestion {
  /** Botanical name: "Allium cepa". */
  readonly species: string;
  /** Percent wet basis. */
  readonly moisture: number;
  /** °C. */
  readonly temperature: number;
  /** Viability at the start and at the end, %, strictly between 0 and 100. */
  readonly from: number;
  readonly to: number;
}

/** A time by the equation, days; or why none is given, with the range where one was left. */
export type StorageAnswer =
  | { readonly days: number; readonly crop: ViabilityCrop }
  | { readonly refused: StorageRefusal; readonly range: Span | null };
export type StorageRefusal = 'dies-of-drying' | 'bears-little-drying' | 'no-constants' | 'moisture' | 'temperature' | 'viability'; // prettier-ignore

/**
 * The time in which stored seed falls from one viability to another, by the improved viability equation: σ times the
 * difference of the two in probits. An aid for planning, never a result: real seed has mostly kept less well than it says
 * (Solberg et al. 2020). Nothing is said of kinds whose seed does not bear drying, or outside the range of the constants.
 *
 * Source: Ellis & Roberts (1980), v = K_i − p/σ. Checked against: R arithmetic (tests/reference/r/viability.R).
 */
export function expectedStorage({ species, moisture, temperature, from, to }: StorageQuestion): StorageAnswer {
  const isAny = (kinds: readonly string[]) => kinds.some((kind) => isOfKind(species, kind));
  if (isAny(NOT_DRIED.sensitive)) return { refused: 'dies-of-drying', range: null };
  if (isAny(NOT_DRIED.intermediate)) return { refused: 'bears-little-drying', range: null };
  const crop = VIABILITY_CROPS.find((known) => isOfKind(species, known.species));
  if (crop === undefined) return { refused: 'no-constants', range: null };
  if (!isIn(moisture, crop.moisture)) return { refused: 'moisture', range: crop.moisture };
  if (!isIn(temperature, crop.temperature)) return { refused: 'temperature', range: crop.temperature };
  if (!(to > 0 && from < 100 && to < from)) return { refused: 'viability', range: null };
  const probits = normalQuantile(from / 100) - normalQuantile(to / 100);
  return { days: viabilityPeriod(crop, moisture, temperature) * probits, crop };
}

const isIn = (value: number, { least, most }: Span): boolean => value >= least && value <= most;
