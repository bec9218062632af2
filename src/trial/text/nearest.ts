/**
 * The candidate that was probably meant: the one with the fewest slips (a letter too many, too few,
 * wrong, or two swapped), where these are at most a third of its letters. Upper and lower case count as equal.
 *
 * Source: optimal string alignment distance (Damerau 1964, Commun. ACM 7, 171–176, the four slips).
 */
export function nearest(word: string, candidates: Iterable<string>): string | null {
  let best: string | null = null;
  let fewest = Infinity;
  for (const candidate of candidates) {
    const allowed = Math.max(1, Math.floor(Math.max(candidate.length, word.length) / 3));
    if (Math.abs(candidate.length - word.length) > allowed) continue;
    const slips = distance(word.toLowerCase(), candidate.toLowerCase());
    if (slips <= allowed && slips < fewest && slips < candidate.length) [best, fewest] = [candidate, slips];
  }
  return best;
}

function distance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (above[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    [before, above] = [above, current];
  }
  return above[b.length] ?? 0;
}
