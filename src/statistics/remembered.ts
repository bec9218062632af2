/**
 * The same function of two numbers, which keeps what it has found: a trial asks for the same few quantiles again and
 * again. What is kept is thrown away as soon as there are `most` values, so that it never grows.
 *
 * @param f pure; what it throws is not kept
 */
export function remembered(f: (a: number, b: number) => number, most = 256): (a: number, b: number) => number {
  const known = new Map<number, Map<number, number>>();
  let size = 0;
  return (a, b) => {
    const before = known.get(a)?.get(b);
    if (before !== undefined) return before;
    const found = f(a, b);
    if (size >= most) {
      known.clear();
      size = 0;
    }
    known.set(a, (known.get(a) ?? new Map<number, number>()).set(b, found));
    size++;
    return found;
  };
}
