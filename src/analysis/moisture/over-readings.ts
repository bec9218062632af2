/** A value read or computed, with what the steps of the scale allow; null range where they are not known. */
export interface Reading {
  readonly value: number;
  readonly range: { readonly lower: number; readonly upper: number } | null;
}

/**
 * A formula of some readings, and the range it takes while each reading moves within its own. The formulas
 * of moisture rise or fall in each reading alone, so the extremes stand at the corners.
 */
export function overReadings(formula: (...values: number[]) => number, readings: readonly Reading[]): Reading {
  const value = formula(...readings.map((reading) => reading.value));
  let corners: number[][] = [[]];
  for (const { range } of readings) {
    if (range === null) return { value, range: null };
    corners = corners.flatMap((corner) => [
      [...corner, range.lower],
      [...corner, range.upper],
    ]);
  }
  const values = corners.map((corner) => formula(...corner));
  return { value, range: { lower: Math.min(...values), upper: Math.max(...values) } };
}
