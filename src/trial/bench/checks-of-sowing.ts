import type { BenchCheck, BenchRecords } from './bench.ts';

/** All checks of a sowing, earliest first. */
export function checksOfSowing({ checks }: BenchRecords, sowing: string): BenchCheck[] {
  return Object.values(checks)
    .filter((check) => check.sowing === sowing)
    .sort((a, b) => a.day - b.day);
}
