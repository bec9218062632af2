import type { Analysis, CaveatId } from '../analysis.ts';
import { appliesTo } from '../caveats/applies-to.ts';
import type { PooledTrial } from '../pooled.ts';
import type { Candidate } from './candidates-of.ts';

/** What several growers take away together: the luck of the one tray or cup that one grower had. */
const TAKEN_AWAY: readonly CaveatId[] = ['one-sowing', 'one-batch'];

/** The serious caveats of a trial's comparison, then its cautions, without those that other trials make up for. */
export function doubtsOf(
  { caveats }: Analysis,
  { result, comparison }: Candidate,
): Pick<PooledTrial, 'doubts' | 'doubtful'> {
  const limits = caveats.filter(
    (caveat) => caveat.weight !== 'note' && !TAKEN_AWAY.includes(caveat.id) && appliesTo(caveat, result, comparison),
  );
  const of = (weight: 'serious' | 'caution') => limits.filter((caveat) => caveat.weight === weight).map(({ id }) => id);
  const [serious, cautions] = [of('serious'), of('caution')];
  return {
    doubts: [...new Set([...serious, ...cautions])],
    doubtful: serious.length > 0 ? 'serious' : cautions.length > 0 ? 'caution' : null,
  };
}
