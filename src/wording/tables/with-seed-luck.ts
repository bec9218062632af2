import type { Interval } from '../../analysis/analysis.ts';
import { seedLuckOnly } from '../../analysis/seed-luck-only.ts';
import type { Words } from '../words.ts';

/** A range in words; with one unit it holds the luck of seeds alone, and says so, on one line: "66 to 93 (seed luck only)". */
export const withSeedLuck = ({ ui }: Words, range: string, interval: Interval): string =>
  seedLuckOnly(interval) ? `${range} (${ui['table.seedLuckOnly'].replaceAll(' ', '\u00A0')})` : range;
