/** Values of s = √(χ²/df), and how much each weighs: the weights add up to 1. */
export interface ChiScale {
  readonly values: readonly number[];
  readonly weights: readonly number[];
}

/**
 * The distribution of s = √(χ²/df) as points for the trapezoid rule over log s², which converges exponentially: means
 * over s of Φ(t·s − ncp) and of its slope keep their digits, in small tails too. Far down, where the density of log s²
 * falls slowly and t·s is next to nothing, the points thin out exponentially.
 *
 * @param df    degrees of freedom, above 0; need not be whole
 * @param t     value that Φ(t·s − ncp) is to be taken at
 * @param reach largest |ncp| that the points are to serve
 *
 * Source: definition of chi-square. Checked through noncentralTCdf.
 */
export function chiScale(df: number, t: number, reach: number): ChiScale {
  // Fine enough for the density of log s² (sd about √(2/df)) and for the rise of Φ (2/|ncp| wide).
  const step = Math.min(Math.sqrt(2 / df), 1, 2 / (reach + 8)) / 1.5;
  const values: number[] = [];
  const weights: number[] = [];
  let mass = 0;
  const add = (v: number): boolean => {
    const thinned = Math.exp(-v - 2) / (1 + t * t);
    const logSquare = v - thinned;
    const square = Math.exp(logSquare);
    const logDensity = (df / 2) * (logSquare + 1 - square);
    if (logDensity < -50) return false;
    const weight = Math.exp(logDensity) * (1 + thinned);
    mass += weight;
    values.push(Math.sqrt(square));
    weights.push(weight);
    return true;
  };
  for (let k = 0; add(k * step); k++);
  for (let k = 1; add(-k * step); k++);
  return { values, weights: weights.map((weight) => weight / mass) };
}
