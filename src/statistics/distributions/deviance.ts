/**
 * x ln(x / mean) + mean − x: how far a count is from its mean, in the units of a log density; without loss of
 * digits where both are nearly the same.
 *
 * @param x    above 0; need not be whole
 * @param mean above 0
 *
 * Source: Loader (2000), Fast and accurate computation of binomial probabilities, from memory (there `bd0`).
 */
export function deviance(x: number, mean: number): number {
  const gap = x - mean;
  if (Math.abs(gap) >= 0.1 * (x + mean)) return x * Math.log(x / mean) - gap;
  const share = gap / (x + mean);
  let term = 2 * x * share;
  let sum = gap * share;
  for (let odd = 3; odd < 25; odd += 2) {
    term *= share * share;
    sum += term / odd;
  }
  return sum;
}
