import { fUpper } from '../distributions/f.ts';

/** F of a restriction on a fitted model. */
export interface RatioF {
  readonly statistic: number;
  readonly df: readonly [number, number];
  readonly p: number;
}

/**
 * Whether a model fits worse with a restriction, where units differ more than seed luck makes them: the rise of the
 * deviance a parameter saved, over φ*, as F.
 *
 * @param restricted deviance with the restriction
 * @param full       deviance without it
 * @param saved      parameters that it saves, 1 or more
 * @throws {RangeError} when the restricted model fits better by more than rounding, or nothing is saved
 *
 * Source: McCullagh & Nelder (1989) section 4.5 and their equation 9.14 (quasi-likelihood), from memory.
 * Checked against: R `anova(glm, glm)` deviances.
 */
export function likelihoodRatioF(
  restricted: number,
  full: number,
  saved: number,
  { used, dfUsed }: { readonly used: number; readonly dfUsed: number },
): RatioF {
  if (!(saved >= 1) || !(restricted - full >= -1e-6 * (1 + full))) {
    throw new RangeError(`likelihoodRatioF needs a restriction that fits no better, got deviances ${restricted} and ${full}, ${saved} saved`); // prettier-ignore
  }
  const statistic = Math.max(0, restricted - full) / saved / used;
  return { statistic, df: [saved, dfUsed], p: fUpper(statistic, saved, dfUsed) };
}
