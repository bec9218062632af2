import type { Caveat, Comparison, Result, Weight } from './analysis.ts';
import { appliesTo } from './caveats/applies-to.ts';

/**
 * Results with the ceiling that caveats put on each comparison (methods 7): any serious one that applies,
 * `cause-unclear`; else any caution, `probably`; notes cap nothing. Verdicts stay as computed: that `same` is not
 * claimed under `cause-unclear` is up to words and claims. `ceilingFrom` lists the ids that set it, in order.
 */
export function withCeilings(results: readonly Result[], caveats: readonly Caveat[]): Result[] {
  return results.map((result) => ({
    ...result,
    ...(result.lines && {
      lines: result.lines.map((line) => ({
        ...line,
        ...ceilingOf(caveats.filter((caveat) => limitsLines(caveat, results, result, line.lot))),
      })),
    }),
    comparisons: result.comparisons.map((comparison) => ({
      ...comparison,
      ...ceilingOf(caveats.filter((caveat) => appliesTo(caveat, result, comparison))),
    })),
  }));
}

function ceilingOf(limits: readonly Caveat[]): Pick<Comparison, 'ceiling' | 'ceilingFrom'> {
  const from = (weight: Weight) => [...new Set(limits.filter((each) => each.weight === weight).map(({ id }) => id))];
  const [serious, cautions] = [from('serious'), from('caution')];
  const ceiling = serious.length > 0 ? 'cause-unclear' : cautions.length > 0 ? 'probably' : 'none';
  return { ceiling, ceilingFrom: serious.length > 0 ? serious : cautions };
}

/** What limits a comparison of the same seed at any test limits the lines, except that it was one comparison of many. */
function limitsLines({ id, outcome, lot }: Caveat, results: readonly Result[], own: Result, of: string): boolean {
  const about = results.find((result) => result.outcome === outcome);
  const isAbout = outcome === null || about === own || about?.measure === 'germination';
  return isAbout && (lot === null || lot === of) && id !== 'many-comparisons';
}
