import { seededRandom } from '../statistics/random.ts';
import { shuffle } from '../statistics/shuffle.ts';
import type { Comparison, Result, UnitValue } from './analysis.ts';

/** The difference as it was, and those of the same units with their labels dealt anew. */
export interface Relabelled {
  readonly real: number;
  /** In the order drawn. */
  readonly others: readonly number[];
  /** How many of the others differ as much as the real one, or more, in either direction. */
  readonly asLarge: number;
}

/** The real one is the largest of 20 about one time in 20 where a treatment does nothing. */
const DRAWN = 19;
/** Fewer arrangements than those of 4 and 3 units are too few to show luck by. */
const LEAST_ARRANGEMENTS = 35;

/**
 * The difference of a comparison beside 19 different random relabellings of the same units; within blocks
 * or lots where the comparison was made within them, each treatment keeping as many units as it had. Differences are
 * weighed as in the comparison: pooled seeds or means of units, in blocks the plain mean over blocks.
 *
 * @param seed of the draws, such as the trial's id
 * @returns null where there are fewer than 35 arrangements, where all units are alike, where lots are pooled that are compared one by one, or
 *          where the comparison was made in another way than this, so that the real difference would not be the one said
 */
export function relabelled(seed: string, result: Result, comparison: Comparison): Relabelled | null {
  const { treatment, control, estimate, lot } = comparison;
  const units = result.values.filter(
    (unit) =>
      (unit.lot === lot || lot === 'all') &&
      unit.stored === comparison.stored &&
      unit.value !== null &&
      (unit.treatment === treatment || unit.treatment === control),
  );
  const inBlocks = comparison.units.kind === 'block';
  const strata = [...Map.groupBy(units, (unit) => (!inBlocks ? null : lot === 'all' ? unit.lot : unit.block)).values()];
  const labels = strata.map((stratum) => stratum.map((unit) => unit.treatment === treatment));
  if ((lot === 'all' && !inBlocks) || estimate === null || arrangements(labels) < LEAST_ARRANGEMENTS) return null;

  const real = difference(strata, labels, result);
  if (!(Math.abs(real - estimate) <= 1e-9 * Math.max(1, Math.abs(estimate)))) return null;

  const random = seededRandom(`${seed}/${result.outcome}/${lot}/${treatment}/${comparison.stored ?? ''}`);
  const seen = new Set([JSON.stringify(labels)]);
  const others: number[] = [];
  while (others.length < DRAWN) {
    const dealt = labels.map((stratum) => shuffle(stratum, random));
    const key = JSON.stringify(dealt);
    if (seen.has(key)) continue;
    seen.add(key);
    others.push(difference(strata, dealt, result));
  }
  if (real === 0 && others.every((other) => other === 0)) return null;
  const reached = Math.abs(real) - 1e-9 * Math.max(1, Math.abs(real));
  return { real: estimate, others, asLarge: others.filter((other) => Math.abs(other) >= reached).length };
}

/** Ways to deal the labels: binomial coefficients, multiplied over blocks. */
function arrangements(labels: readonly (readonly boolean[])[]): number {
  return labels.reduce((ways, stratum) => {
    const chosen = stratum.filter(Boolean).length;
    let own = 1;
    for (let i = 1; i <= chosen; i++) own = (own * (stratum.length - chosen + i)) / i;
    return ways * own;
  }, 1);
}

function difference(
  strata: readonly (readonly UnitValue[])[],
  labels: readonly (readonly boolean[])[],
  { measure }: Result,
): number {
  const within = strata.map((stratum, index) => {
    const of = (wanted: boolean) => stratum.filter((_, unit) => labels[index]?.[unit] === wanted);
    const size = measure === 'germination' ? pooledShare : meanValue;
    return size(of(true)) - size(of(false));
  });
  return within.reduce((sum, value) => sum + value, 0) / within.length;
}

function pooledShare(units: readonly UnitValue[]): number {
  const sum = (of: 'count' | 'seeds') => units.reduce((total, unit) => total + (unit[of] ?? NaN), 0);
  return (100 * sum('count')) / sum('seeds');
}

function meanValue(units: readonly UnitValue[]): number {
  return units.reduce((sum, { value }) => sum + (value ?? NaN), 0) / units.length;
}
