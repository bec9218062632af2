/**
 * The same items in an order drawn at random, every order equally likely; the input stays as it is.
 *
 * @param random gives numbers from 0 up to but not including 1, such as seededRandom
 *
 * Source: Fisher & Yates (1938); Durstenfeld (1964), Commun. ACM 7, 420.
 */
export function shuffle<T>(items: readonly T[], random: () => number): T[] {
  const drawn = [...items];
  for (let last = drawn.length - 1; last > 0; last--) {
    const pick = Math.floor(random() * (last + 1));
    [drawn[last], drawn[pick]] = [drawn[pick] as T, drawn[last] as T];
  }
  return drawn;
}
