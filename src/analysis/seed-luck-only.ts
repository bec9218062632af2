import type { Interval } from './analysis.ts';

/** True where an interval covers the luck of seeds only, because there was one unit: it is drawn dashed, with an open mark. */
export const seedLuckOnly = (interval: Interval | null): boolean => interval?.method.endsWith('-seeds-only') ?? false;
