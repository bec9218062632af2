import { seededRandom } from '../random.ts';
import { DRAWS, MOST_EXACT } from './permutation-p.ts';

/**
 * The difference between two groups for every assignment of the same units to them, up to 50 000
 * assignments; otherwise for 20 000 drawn at random. Units are named by index, 0 to `total` − 1.
 *
 * @param total      number of units in both groups
 * @param first      number of units in the first group
 * @param difference of the two groups when the units of `chosen` make up the first; not kept, not changed
 * @param seed       of the draws
 */
export function rearrange(
  total: number,
  first: number,
  difference: (chosen: readonly number[]) => number,
  seed: number | string,
): { differences: Float64Array; exact: boolean } {
  const arrangements = choose(total, first);
  if (arrangements > MOST_EXACT) {
    const random = seededRandom(seed);
    const units = Array.from({ length: total }, (_, index) => index);
    const differences = Float64Array.from({ length: DRAWS }, () => difference(draw(units, first, random)));
    return { differences, exact: false };
  }
  const chosen = Array.from({ length: first }, (_, index) => index);
  const differences = new Float64Array(arrangements);
  for (let index = 0; index < arrangements; index++) {
    differences[index] = difference(chosen);
    advance(chosen, total);
  }
  return { differences, exact: true };
}

/** Binomial coefficient; exact as far as it matters here. */
function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(k, n - k); i++) ways = (ways * (n - i + 1)) / i;
  return Math.round(ways);
}

/** The next choice in lexicographic order, in place. */
function advance(chosen: number[], total: number): void {
  let place = chosen.length - 1;
  while (place >= 0 && chosen[place] === total - chosen.length + place) place--;
  if (place < 0) return;
  let next = (chosen[place] ?? 0) + 1;
  for (; place < chosen.length; place++) chosen[place] = next++;
}

/** The first `size` of the units after a partial Fisher–Yates shuffle, which stays in place for the next draw. */
function draw(units: number[], size: number, random: () => number): number[] {
  for (let place = 0; place < size; place++) {
    const pick = place + Math.floor(random() * (units.length - place));
    [units[place], units[pick]] = [units[pick] ?? 0, units[place] ?? 0];
  }
  return units.slice(0, size);
}
