/**
 * Random numbers that everyone can draw again: the same seed gives the same numbers here, in any browser
 * and in R (`RNGkind("L'Ecuyer-CMRG"); set.seed(seed); runif(n)`). Good for layouts, permutations and
 * simulation; not for secrets.
 *
 * @param seed a whole number of 32 bits, or a text, which stands for its FNV-1a hash
 * @returns a function that gives the next number, above 0 and below 1
 * @throws {RangeError} when a seed number is not a whole number of 32 bits
 *
 * Source: MRG32k3a, L'Ecuyer (1999), Oper. Res. 47, 159–164; seeded as R does it (RNG.c).
 * Checked against: R `runif`, number by number.
 */
export function seededRandom(seed: number | string): () => number {
  if (typeof seed === 'number' && (!Number.isInteger(seed) || seed < -(2 ** 31) || seed >= 2 ** 32)) {
    throw new RangeError(`seededRandom needs a whole number of 32 bits or a text, got ${seed}`);
  }
  let scramble = typeof seed === 'number' ? seed : fnv1a(seed);
  const next = () => (scramble = Math.imul(69069, scramble) + 1) >>> 0;
  for (let round = 0; round < 50; round++) next();
  const word = (): number => {
    const value = next();
    return value < M2 ? value : word();
  };
  let [a0, a1, a2, b0, b1, b2] = [word(), word(), word(), word(), word(), word()];

  return () => {
    // All products stay below 2^53, so doubles hold them exactly.
    const a = modulo(1403580 * a1 - 810728 * a0, M1);
    [a0, a1, a2] = [a1, a2, a];
    const b = modulo(527612 * b2 - 1370589 * b0, M2);
    [b0, b1, b2] = [b1, b2, b];
    return (a > b ? a - b : a - b + M1) * 2.328306549295728e-10;
  };
}

const M1 = 4294967087;
const M2 = 4294944443;

/** The remainder as clocks have it, from 0 up. Exact below 2^53, and several times as fast as `%`, which is made for fractions. */
function modulo(value: number, by: number): number {
  const left = value - Math.floor(value / by) * by;
  return left < 0 ? left + by : left < by ? left : left - by;
}

/** 32-bit FNV-1a over the UTF-8 bytes of a text (Fowler, Noll & Vo). */
function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash;
}
