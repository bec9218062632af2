import { checkCounted, type Counted } from './counted.ts';

/**
 * Odds of germinating in the first group over the odds in the second. Where one of the four cells is
 * empty, ½ is added to all of them, and `halfAdded` says so.
 *
 * @returns ratio null where both groups are at 0 or both at 100 %
 * @throws {RangeError} when a group is not a count out of seeds
 *
 * Source: methods.md 2; the ½ is Haldane (1956), Ann. Hum. Genet. 20, 309–311, from memory.
 * Checked against: R arithmetic on the table.
 */
export function oddsRatio(first: Counted, second: Counted): { ratio: number | null; halfAdded: boolean } {
  checkCounted('oddsRatio', first);
  checkCounted('oddsRatio', second);
  const count = first.count + second.count;
  if (count === 0 || count === first.seeds + second.seeds) return { ratio: null, halfAdded: false };

  const cells = [first.count, first.seeds - first.count, second.count, second.seeds - second.count];
  const halfAdded = cells.includes(0);
  const [a = 0, b = 0, c = 0, d = 0] = halfAdded ? cells.map((cell) => cell + 0.5) : cells;
  return { ratio: (a * d) / (b * c), halfAdded };
}
