import type { PlanDesign } from './plan-design.ts';

/**
 * Standard deviation of what is compared, unit by unit: tray means of a trait as given; times to half from the spread
 * between trays and the luck of the seeds in each, √(spread² + (π/2) seedSpread²/n) for n that come up.
 *
 * Source: variance of a median of normal times, Cramér (1946), section 28.5, from memory.
 * Checked against: the times that drawCrop draws with daily checks.
 */
export function unitSpread({ spread, seeds, timing }: PlanDesign): number {
  if (timing === null) return spread;
  const up = (seeds * timing.germination) / 100;
  return Math.sqrt(spread ** 2 + ((Math.PI / 2) * timing.seedSpread ** 2) / up);
}
