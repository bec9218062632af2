/**
 * What Stirling's formula leaves out of a factorial: ln Γ(n + 1) − [(n + ½) ln n − n + ½ ln 2π]. With it, densities
 * of large counts keep their digits, which differences of log gammas lose.
 *
 * @param n above 0; need not be whole
 *
 * Source: Loader (2000), Fast and accurate computation of binomial probabilities, from memory; the series is DLMF
 * 5.11.1, the step from n + 1 to n is Γ(n + 2) = (n + 1) Γ(n + 1). Checked against: R `lgamma`.
 */
export function stirlingError(n: number): number {
  let [steps, m] = [0, n];
  for (; m < 9; m++) steps += (m + 0.5) * Math.log1p(1 / m) - 1;
  const square = 1 / (m * m);
  const tail = 1 / 1680 - (1 / 1188 - (691 / 360360 - square / 156) * square) * square;
  const series = 1 / 12 - (1 / 360 - (1 / 1260 - tail * square) * square) * square;
  return steps + series / m;
}
