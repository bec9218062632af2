import { expect } from 'vitest';

/** |actual − expected| / |expected| at most `tolerance`; an expected zero must be met exactly. */
export function expectClose(actual: number | null | undefined, expected: number, tolerance = 1e-9): void {
  const error = expected === 0 ? Math.abs(actual ?? NaN) : Math.abs(((actual ?? NaN) - expected) / expected);
  expect(error, `${actual} should be ${expected}`).toBeLessThanOrEqual(expected === 0 ? 0 : tolerance);
}
