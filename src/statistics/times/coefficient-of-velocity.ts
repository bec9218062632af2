import type { Check } from './checks.ts';
import { meanGerminationTime } from './mean-germination-time.ts';

/**
 * Kotowski's coefficient of velocity: 100 over the mean germination time.
 *
 * @returns null where nothing germinated
 * @throws {RangeError} when days do not rise or a count is negative
 *
 * Source: Kotowski (1926), Proc. Am. Soc. Hortic. Sci. 23, 176–184. Checked against: R arithmetic.
 */
export function coefficientOfVelocity(checks: readonly Check[]): number | null {
  const time = meanGerminationTime(checks);
  return time === null ? null : 100 / time;
}
