import type { Trial } from '../../trial/trial.ts';
import type { Caveat, Result } from '../analysis.ts';

/** One caveat's rule: every place in the trial where it applies, in any order. */
export type Rule = (trial: Trial, results: readonly Result[]) => readonly Caveat[];
