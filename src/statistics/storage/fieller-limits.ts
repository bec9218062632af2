/** Where a line a + b x meets a level, with its Fieller limits. */
export interface FiellerLimits {
  readonly estimate: number;
  /** Null where g is 1 or more: the slope is not told from none, and the limits are without bound. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** (quantile · se of the slope / slope)². */
  readonly g: number;
}

/** A fitted line: intercept and slope with their variances and covariance. */
export interface Line {
  readonly intercept: number;
  readonly slope: number;
  readonly covariance: readonly [number, number, number];
}

/**
 * The x at which a fitted line reaches `level`, with limits after Fieller: all x at which the line could be at that
 * level. Unlike estimate ± se they need not be symmetric, and tell when nothing can be told.
 *
 * @param line     `covariance`: variance of the intercept, covariance, variance of the slope
 * @param quantile normal or t quantile of the wanted level, above 0
 * @param level    on the scale of the line; 0 is half, in probits
 * @throws {RangeError} when the slope is 0 or a variance is negative
 *
 * Source: Fieller (1940, 1954); Finney (1971) section 4.5, from memory.
 * Checked against: the same quadratic solved in R on `vcov(glm(family = binomial("probit")))`; the rotenone data.
 */
export function fiellerLimits(line: Line, quantile: number, level = 0): FiellerLimits {
  const { intercept, slope, covariance } = line;
  const [va, vab, vb] = covariance;
  if (slope === 0 || !(va >= 0 && vb >= 0 && quantile > 0)) {
    throw new RangeError(`fiellerLimits needs a slope, variances of 0 or more and a quantile above 0, got slope ${slope}, variances ${va} and ${vb}, quantile ${quantile}`); // prettier-ignore
  }
  const a = intercept - level;
  const square = quantile ** 2;
  const g = (square * vb) / slope ** 2;
  const estimate = -a / slope;
  // (a + b x)² = q² var(a + b x), a quadratic in x.
  const leading = slope ** 2 - square * vb;
  const middle = a * slope - square * vab;
  const rest = a ** 2 - square * va;
  const root = middle ** 2 - leading * rest;
  if (!(g < 1) || root < 0) return { estimate, lower: null, upper: null, g };
  const reach = Math.sqrt(root);
  return { estimate, lower: (-middle - reach) / leading, upper: (-middle + reach) / leading, g };
}
