import type { Caveat, Result, Weight } from './analysis.ts';
import { appliesTo } from './caveats/applies-to.ts';

/**
 * Results with the ceiling that caveats put on each comparison (methods 7): any serious one that applies,
 * `cause-unclear`; else any caution, `probably`; notes cap nothing. Verdicts stay as computed: that `same` is not
 * claimed under `cause-unclear` is up to words and claims. `ceilingFrom` lists the ids that set it, in order.
 */
export function withCeilings(results: readonly Result[], caveats: readonly Caveat[]): Result[] {
  return results.map((result) => ({
    ...result,
    comparisons: result.comparisons.map((comparison) => {
      const limits = caveats.filter((caveat) => appliesTo(caveat, result, comparison));
      const from = (weight: Weight) => [
        ...new Set(limits.filter((each) => each.weight === weight).map(({ id }) => id)),
      ];
      const [serious, cautions] = [from('serious'), from('caution')];
      const ceiling = serious.length > 0 ? 'cause-unclear' : cautions.length > 0 ? 'probably' : 'none';
      return { ...comparison, ceiling, ceilingFrom: serious.length > 0 ? serious : cautions };
    }),
  }));
}
