/** A place where what was recomputed is not what was published. */
export interface Difference {
  /** `results[germination].comparisons[leek-2025, jar].interval.lower`. */
  readonly path: string;
  readonly published: unknown;
  readonly recomputed: unknown;
}

/** A number and its place. */
export interface Figure {
  readonly path: string;
  readonly value: number;
}

/** Digits may differ in the last places between machines; not by more than this, relative to the figure. */
const TOLERANCE = 1e-9;

/**
 * Two values as they stand in JSON, compared through and through.
 *
 * @param skip keys that are not compared, wherever they stand
 * @returns every difference, and every number of the published value with its place
 */
export function differencesOf(
  published: unknown,
  recomputed: unknown,
  skip: ReadonlySet<string> = new Set(),
): { readonly differences: readonly Difference[]; readonly figures: readonly Figure[] } {
  const differences: Difference[] = [];
  const figures: Figure[] = [];
  compare('', published, recomputed);
  return { differences, figures };

  function compare(path: string, a: unknown, b: unknown): void {
    if (typeof a === 'number') figures.push({ path, value: a });
    if (isList(a) && isList(b)) {
      for (let index = 0; index < Math.max(a.length, b.length); index++) {
        compare(`${path}[${nameOf(a[index] ?? b[index], index)}]`, a[index], b[index]);
      }
    } else if (isObject(a) && isObject(b)) {
      for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
        if (!skip.has(key)) compare(path === '' ? key : `${path}.${key}`, a[key], b[key]);
      }
    } else if (!isAlike(a, b)) differences.push({ path, published: a, recomputed: b });
  }
}

function isAlike(a: unknown, b: unknown): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  return Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(a), Math.abs(b));
}

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !isList(value);

/** What tells an entry of a list apart for a person; else its number, from 1. */
function nameOf(entry: unknown, index: number): string {
  if (!isObject(entry)) return String(index + 1);
  const parts = ['outcome', 'id', 'lot', 'treatment', 'stored', 'unit', 'sowing', 'file']
    .filter((key) => key !== 'unit' || isList(entry.sowings))
    .map((key) => entry[key])
    .filter((part) => typeof part === 'string' || typeof part === 'number');
  return parts.length === 0 ? String(index + 1) : parts.join(', ');
}
