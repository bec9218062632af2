/**
 * One draw from the standard normal distribution.
 *
 * @param random gives numbers between 0 and 1, such as seededRandom
 *
 * Source: polar method, Marsaglia & Bray (1964), SIAM Rev. 6, 260–264; one of its pair is thrown away, so that a draw
 * depends on nothing but `random`. Checked against: R `pnorm`, share of draws below.
 */
export function normalDraw(random: () => number): number {
  for (;;) {
    const x = 2 * random() - 1;
    const y = 2 * random() - 1;
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}
