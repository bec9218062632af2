import { randomEffects, type RandomEffects } from './random-effects.ts';
import type { Study } from './study.ts';

/**
 * The trials put together without each of them in turn, in their order: whether one of them alone carries the answer.
 *
 * @param studies three or more
 * @throws {RangeError} with fewer, or where a standard error is not above 0
 *
 * Checked against: `randomEffects` of the rest; R (tests/reference/r/pooling.R).
 */
export const leaveOneOut = (studies: readonly Study[]): readonly RandomEffects[] =>
  studies.map((_, index) => randomEffects(studies.toSpliced(index, 1)));
