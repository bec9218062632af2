/** Days of a year of storage, as the data format counts it. */
const DAYS_A_YEAR = 365.25;

/** The ISO date so many years of storage (365.25 days) after another; years may have decimals. */
export function addYears(date: string, years: number): string {
  const day = new Date(`${date}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + Math.round(years * DAYS_A_YEAR));
  return day.toISOString().slice(0, 10);
}
