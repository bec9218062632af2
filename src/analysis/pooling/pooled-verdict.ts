import type { Ceiling, Range } from '../analysis.ts';
import type { Pooled, PooledTrial } from '../pooled.ts';

/** Half: from there on what is doubtful carries the answer. */
const HALF = 50;

/**
 * What trials together say, and how far their own doubts cap it. Never `same`: the smallest difference that matters of a
 * question bears no date, so likeness cannot have been agreed before the counts. Trials with a serious doubt that hold
 * half of the weight or more: `cause-unclear`; any doubt else: `probably`.
 */
export function pooledVerdict(
  trials: readonly PooledTrial[],
  interval: Range | null,
  matters: number | null,
): Pick<Pooled, 'verdict' | 'ceiling' | 'within'> {
  const { lower, upper } = interval ?? { lower: null, upper: null };
  if (lower === null || upper === null) return { verdict: 'not-pooled', ceiling: 'none', within: null };
  const margin = matters || null;
  const beyond = (line: number) => lower > line || upper < -line;
  return {
    verdict: margin !== null && beyond(margin) ? 'matters' : beyond(0) ? 'different' : 'unclear',
    ceiling: ceilingOf(trials),
    within: margin === null ? null : -margin <= lower && upper <= margin,
  };
}

function ceilingOf(trials: readonly PooledTrial[]): Ceiling {
  const serious = trials.filter(({ doubtful }) => doubtful === 'serious');
  const weight = serious.reduce((sum, trial) => sum + (trial.weight ?? 0), 0);
  if (weight >= HALF) return 'cause-unclear';
  return trials.some(({ doubtful }) => doubtful !== null) ? 'probably' : 'none';
}
