/** `n` values with exactly this mean and standard deviation (n − 1): published summaries as data. */
export function withMoments(n: number, mean: number, sd: number): number[] {
  const raw = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const spread = Math.sqrt(raw.reduce((sum, value) => sum + value ** 2, 0) / (n - 1));
  return raw.map((value) => mean + (sd * value) / spread);
}
