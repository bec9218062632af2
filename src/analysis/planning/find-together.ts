import type { Comparison } from '../analysis.ts';
import type { Context } from '../comparisons/context.ts';
import { pooledGermination } from '../comparisons/pooled-germination.ts';
import { pooledMeans } from '../comparisons/pooled-means.ts';
import { pooledTiming } from '../comparisons/pooled-timing.ts';
import type { Pair } from '../units/lot-units.ts';
import { findGermination } from './find-germination.ts';
import { findMeans } from './find-means.ts';
import type { Found } from './found.ts';

/**
 * All crops together (methods 4): pooled over crops with two units or more of each, or, with one unit of each in three
 * crops or more, with the crops as blocks.
 *
 * @returns null where they cannot be put together
 *
 * Checked against: pooledComparisons on the same draws.
 */
export function findTogether(pairs: readonly Pair[], context: Context): Found | null {
  const { measure } = context.outcome;
  const isShare = measure === 'germination';
  const known = pairs.filter(({ treated, control }) =>
    [...treated.units, ...control.units].every(({ value }) => value !== null),
  );
  const replicated = known.filter((pair) => fewest(pair) >= 2);
  if (replicated.length >= 2) return taken((isShare ? pooledGermination : pooledMeans)(replicated, context));

  const single = known.filter(({ treated, control }) => treated.units.length === 1 && control.units.length === 1);
  const [first] = single;
  if (first === undefined || single.length < 3) return null;
  const blocks = single.map(({ lot, treated, control }) => ({
    block: lot,
    treated: treated.units,
    control: control.units,
  }));
  if (isShare) return findGermination(first, context, blocks);
  const weights = single.map(() => 1);
  return findMeans(first, context, { blocks, timing: pooledTiming(single, weights, measure) });
}

const fewest = ({ treated, control }: Pair): number => Math.min(treated.units.length, control.units.length);

const taken = ({ estimate, interval, test, verdict }: Comparison): Found => ({
  estimate,
  interval,
  p: test?.p ?? null,
  verdict,
});
