import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { r } from './r.ts';

const NOTHING = -1e300;

/**
 * Values of several R expressions, numeric vectors in which NA is null, after running the functions of
 * tests/reference/r/<script>. One call of R for all.
 */
export async function rFigures(script: string, expressions: readonly string[]): Promise<(number | null)[][]> {
  const functions = readFileSync(new URL(`../reference/r/${script}`, import.meta.url), 'utf8');
  const flat = await r(`${functions}
    unlist(lapply(list(${expressions.join(',\n')}), function(v) { v[is.na(v)] <- ${NOTHING}; c(length(v), v) }))`);
  const figures: (number | null)[][] = [];
  for (let at = 0; at < flat.length; at += 1 + (flat[at] ?? 0)) {
    const values = flat.slice(at + 1, at + 1 + (flat[at] ?? 0));
    figures.push(values.map((value) => (value === NOTHING ? null : value)));
  }
  return figures;
}

/** An R vector. */
export const vector = (values: readonly number[]): string => `c(${values.map((value) => value.toPrecision(17)).join(',')})`; // prettier-ignore

/**
 * Every figure agrees with R: null with NA, numbers to a relative 1e-9 (or what is given for a name); where
 * a figure is zero but for cancellation, to 1e-10.
 */
export function expectFigures(
  actual: Readonly<Record<string, number | null | undefined>>,
  expected: readonly (number | null)[],
  tolerances: Readonly<Record<string, number>> = {},
): void {
  const names = Object.keys(actual);
  expect(names.length, 'as many figures as R gives').toBe(expected.length);
  for (const [index, name] of names.entries()) {
    const [found = null, wanted = null] = [actual[name], expected[index]];
    const said = `${name} ${found} should be ${wanted}`;
    if (found === null || wanted === null) expect(found, said).toBe(wanted);
    else {
      const allowed = Math.max((tolerances[name] ?? 1e-9) * Math.abs(wanted), 1e-10);
      expect(Math.abs(found - wanted), said).toBeLessThanOrEqual(allowed);
    }
  }
}
