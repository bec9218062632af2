import { mean } from 'simple-statistics';
import { checkCounted, type Counted } from './counted.ts';
import { tTwoSided } from './distributions/t.ts';
import type { Share } from './newcombe-interval.ts';
import { shrunkDispersion } from './shrunk-dispersion.ts';
import { variance } from './variance.ts';

/** The two groups of a block (or of a lot), units of each added up. */
export interface Pair {
  readonly treated: Counted;
  readonly control: Counted;
}

/** Germination compared within blocks. Proportions; `difference` is treated minus control. */
export interface BlockDispersion {
  readonly difference: number;
  /** Mean share of the blocks with the effective number of seeds behind it: what newcombeInterval takes. */
  readonly treated: Share;
  readonly control: Share;
  /** φ_B: variance of the block differences over what seed luck alone would make it. */
  readonly phi: number;
  /** Number of blocks − 1. */
  readonly df: number;
  /** φ* and ν. */
  readonly used: number;
  readonly dfUsed: number;
  /** t on ν, with its two-sided p. */
  readonly statistic: number;
  readonly p: number;
}

/**
 * Two treatments, both in every block: difference, dispersion and test from the differences within blocks.
 *
 * @param blocks three or more by the method; two or more are computed
 * @throws {RangeError} with fewer than two blocks, or a group that is not a count out of seeds
 *
 * Source: methods.md 3: v = mean over blocks of Σ p̃q̃/n with p̃ = (x + ½)/(N + 1), φ_B = s²_d/v,
 * φ* = max(1, (2 + (b − 1)φ_B)/b), ν = b, n* = (b²/Σ 1/n)/φ*, t = d̄/√(φ* v/b).
 * Checked against: R arithmetic, vectorised.
 */
export function blockDispersion(blocks: readonly Pair[]): BlockDispersion {
  if (blocks.length < 2) throw new RangeError(`blockDispersion needs two blocks or more, got ${blocks.length}`);
  const [treated, control] = [blocks.map((block) => block.treated), blocks.map((block) => block.control)];
  for (const group of [...treated, ...control]) checkCounted('blockDispersion', group);

  const differences = blocks.map((block) => shareOf(block.treated) - shareOf(block.control));
  const luck = luckOf(treated) + luckOf(control);
  const phi = variance(differences) / luck;
  const df = blocks.length - 1;
  const { used, dfUsed } = shrunkDispersion(df * phi, df);
  const difference = mean(differences);
  const statistic = difference / Math.sqrt((used * luck) / blocks.length);
  const behind = (groups: readonly Counted[]): Share => ({
    share: mean(groups.map(shareOf)),
    size: blocks.length ** 2 / groups.reduce((sum, { seeds }) => sum + 1 / seeds, 0) / used,
  });
  return {
    difference,
    treated: behind(treated),
    control: behind(control),
    phi,
    df,
    used,
    dfUsed,
    statistic,
    p: tTwoSided(statistic, dfUsed),
  };
}

const shareOf = ({ count, seeds }: Counted) => count / seeds;

/** Mean over blocks of p̃q̃/n, the variance that seed luck gives one group's share in a block. */
function luckOf(groups: readonly Counted[]): number {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const seeds = groups.reduce((sum, group) => sum + group.seeds, 0);
  const share = (count + 0.5) / (seeds + 1);
  return share * (1 - share) * mean(groups.map((group) => 1 / group.seeds));
}
