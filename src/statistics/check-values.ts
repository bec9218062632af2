/**
 * Refuses values that are not finite numbers, or too few of them.
 *
 * @throws {RangeError} naming the function that was called with them
 */
export function checkValues(caller: string, values: readonly number[], least: number): void {
  if (values.length < least || !values.every(Number.isFinite)) {
    throw new RangeError(`${caller} needs ${least} finite values or more, got ${JSON.stringify(values)}`);
  }
}
