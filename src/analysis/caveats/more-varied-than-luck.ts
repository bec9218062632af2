import { chiSquareUpper } from '../../statistics/distributions/chi-square.ts';
import { pearsonDispersion } from '../../statistics/pearson-dispersion.ts';
import { replicateAgreement } from '../replicate-agreement.ts';
import { countedUnits } from './counted-units.ts';
import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';
import { unitGroups } from './unit-groups.ts';

/**
 * Units of the same treatment differ more than seed luck explains: over-dispersed (φ above 2 and X² above its
 * 95 % point over the groups of the lot) or, where they are not, a range beyond tolerance in a group (methods 12).
 * One caveat a lot, never both.
 */
export const moreVariedThanLuck: Rule = (trial, results) =>
  results.filter(isGermination).flatMap((result) =>
    trial.lots.flatMap(({ id: lot }) => {
      const evidence = variedness(unitGroups(result, lot));
      return evidence === null ? [] : [makeCaveat('more-varied-than-luck', { outcome: result.outcome, lot }, evidence)];
    }),
  );

function variedness(groups: ReturnType<typeof unitGroups>): Evidence['more-varied-than-luck'] | null {
  const counted = groups.map(({ values }) => countedUnits(values));
  const { statistic, df, phi } = pearsonDispersion(counted);
  const ranges = groups.flatMap((group, index) => {
    const agreement = replicateAgreement(counted[index] ?? []);
    if (agreement === null || !agreement.isBeyond) return [];
    const { isBeyond: _, ...range } = agreement;
    return [{ treatment: group.treatment, stored: group.stored, ...range }];
  });

  const p = df === 0 ? 1 : chiSquareUpper(statistic, df);
  if (phi !== null && phi > 2 && p < 0.05) return { phi, df, p, ranges };
  return ranges.length === 0 ? null : { phi: null, df: null, p: null, ranges };
}
