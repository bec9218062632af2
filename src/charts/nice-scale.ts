export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

/**
 * A round axis around values: ends and ticks at 1, 2 or 5 times a power of ten, at most `most` ticks.
 * Values that are all alike get room on both sides; no values give 0 to 1.
 */
export function niceScale(values: readonly number[], most = 5): Scale {
  let low = values.length ? Math.min(...values) : 0;
  let high = values.length ? Math.max(...values) : 1;
  if (low === high) {
    const room = Math.abs(low) / 10 || 1;
    low -= room;
    high += room;
  }
  for (const step of steps((high - low) / most)) {
    const first = Math.floor(low / step + 1e-9);
    const last = Math.ceil(high / step - 1e-9);
    if (last - first < most) {
      // Divides by a whole number where the step is below 1: 3 / 10, not 3 × 0.1, which is 0.30000000000000004.
      const at = (n: number) => (step < 1 ? n / Math.round(1 / step) : n * step);
      const ticks = Array.from({ length: last - first + 1 }, (_, index) => at(first + index));
      return { low: at(first), high: at(last), ticks };
    }
  }
  throw new RangeError(`niceScale needs finite values, got ${values.join(', ')}`);
}

function* steps(from: number) {
  let power = Math.floor(Math.log10(from));
  for (let tries = 0; tries < 4; tries++, power++) {
    for (const digit of [1, 2, 5]) if (digit * 10 ** power >= from * 0.999) yield digit * 10 ** power;
  }
}
