import { betaKernel } from './beta-kernel.ts';
import { incompleteBeta } from './incomplete-beta.ts';

/**
 * F distribution, upper tail P(F > x), to full relative precision however small.
 *
 * @param x   0 or more
 * @param df1 degrees of freedom of the numerator, above 0
 * @param df2 of the denominator, above 0
 * @throws {RangeError} outside those
 *
 * Checked against: R `pf(x, df1, df2, lower.tail = FALSE)`.
 */
export function fUpper(x: number, df1: number, df2: number): number {
  if (!(x >= 0 && isDf(df1) && isDf(df2))) {
    throw new RangeError(`fUpper needs 0 or more and degrees of freedom above 0, got ${x} on ${df1}, ${df2}`);
  }
  return x < 1 ? 1 - lower(x, df1, df2) : lower(1 / x, df2, df1);
}

/**
 * The x with P(F ≤ x) = p. Newton steps in logarithms of both: log P is concave in log x, so that from the second step
 * on they near the root from below, from wherever they start.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that, or when a df is not above 0
 *
 * Checked against: R `qf`.
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  if (!(p > 0 && p < 1 && isDf(df1) && isDf(df2))) {
    throw new RangeError(`fQuantile needs a probability between 0 and 1 and df above 0, got ${p} on ${df1}, ${df2}`);
  }
  if (p > 0.5) return 1 / fQuantile(1 - p, df2, df1);

  const kernel = betaKernel(df1 / 2, df2 / 2);
  const at = (x: number) => {
    const [share, rest] = shares(x, df1, df2);
    const density = kernel(share, rest); // of log x
    return { x, density, tail: incompleteBeta(share, rest, df1 / 2, df2 / 2, density) };
  };
  let now = at(1);
  for (let round = 0; round < 100; round++) {
    let step = (Math.log(now.tail / p) * now.tail) / now.density;
    let next = at(now.x * Math.exp(-step));
    for (; next.tail === 0; next = at(now.x * Math.exp(-step))) step /= 2; // so far down nothing is left of P
    now = next;
    if (Math.abs(step) <= 1e-9) break; // the next would be as small as its square
  }
  return now.x;
}

const isDf = (df: number) => df > 0 && df < Infinity;
const lower = (x: number, df1: number, df2: number) => incompleteBeta(...shares(x, df1, df2), df1 / 2, df2 / 2);
const shares = (x: number, df1: number, df2: number) => [(df1 * x) / (df2 + df1 * x), df2 / (df2 + df1 * x)] as const;
