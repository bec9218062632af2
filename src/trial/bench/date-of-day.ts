/** ISO date of a day after sowing; decimals of the day are within that date. */
export function dateOfDay(sown: string, day: number): string {
  return new Date(Date.parse(`${sown}T00:00:00Z`) + Math.floor(day) * 86_400_000).toISOString().slice(0, 10);
}
