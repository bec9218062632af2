import type { Rate } from '../../src/analysis/planning/simulated.ts';

/** A share of simulated trials with its standard error, half a success and half a failure added for the error. */
export function shareOf(count: number, of: number): Rate {
  const guarded = (count + 0.5) / (of + 1);
  return { share: count / of, error: Math.sqrt((guarded * (1 - guarded)) / of) };
}
