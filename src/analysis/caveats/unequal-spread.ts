import { chiSquareUpper } from '../../statistics/distributions/chi-square.ts';
import { fQuantile } from '../../statistics/distributions/f.ts';
import { pearsonDispersion, type Dispersion } from '../../statistics/pearson-dispersion.ts';
import { countedUnits } from './counted-units.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * One treatment's units vary more than the other's: the ratio of their dispersions is above the F quantile
 * at 0.975 (methods 2), and the wider one is beyond seed luck by itself (X² above its 95 % point): two trays that
 * happen to tie have a dispersion of zero, which makes any ratio infinite.
 */
export const unequalSpread: Rule = (trial, results) =>
  pairsOf(trial, results.filter(isGermination)).flatMap(({ about, treated, control }) => {
    const sides = [treated, control].map(({ treatment, values }) => ({
      treatment,
      ...pearsonDispersion([countedUnits(values)]),
    }));
    const [narrow, wide] = sides.toSorted((a, b) => (a.phi ?? 0) - (b.phi ?? 0));
    if (narrow === undefined || wide === undefined || narrow.phi === null || wide.phi === null) return [];

    const limit = fQuantile(0.975, wide.df, narrow.df);
    const ratio = narrow.phi === 0 ? null : wide.phi / narrow.phi;
    if ((ratio ?? Infinity) <= limit || !isBeyondLuck(wide)) return [];
    const phi = { wider: wide.phi, narrower: narrow.phi };
    const evidence = { wider: wide.treatment, narrower: narrow.treatment, phi, ratio, limit };
    return [makeCaveat('unequal-spread', about, evidence)];
  });

const isBeyondLuck = ({ statistic, df }: Dispersion): boolean => chiSquareUpper(statistic, df) < 0.05;
