/** Unit of the difference of two values: percentages differ by percentage points. */
export function unitOfDifference(unit: string): string {
  return unit.startsWith('%') ? 'percentage points' : unit;
}
