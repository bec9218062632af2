/** One trial's answer: its difference, and the standard error of that, in the same unit. */
export interface Study {
  readonly estimate: number;
  readonly se: number;
}

/**
 * Refuses answers that cannot be pooled.
 *
 * @throws {RangeError} naming the function that was called with them
 */
export function checkStudies(caller: string, studies: readonly Study[], least: number): void {
  const isUsable = ({ estimate, se }: Study) => Number.isFinite(estimate) && se > 0 && se < Infinity;
  if (studies.length < least || !studies.every(isUsable)) {
    throw new RangeError(
      `${caller} needs ${least} or more estimates with standard errors above 0, got ${JSON.stringify(studies)}`,
    );
  }
}
