import { expect } from 'vitest';
import { expectClose } from './close.ts';

/** As expectClose; an expected null must be null. */
export function expectCloseOrNull(
  actual: number | null | undefined,
  expected: number | null,
  tolerance?: number,
): void {
  if (expected === null) expect(actual).toBeNull();
  else expectClose(actual, expected, tolerance);
}
