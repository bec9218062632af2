import { normalCdf } from '../../statistics/distributions/normal.ts';
import type { SurvivalLine } from '../survival-line.ts';

const STEPS = 40;

/** The fitted line as shares of 100, from the first to the last time tested and no further; empty without a line. */
export function survivalCurve({ ki, slope, tests }: SurvivalLine): readonly { stored: number; percent: number }[] {
  const times = tests.filter(({ estimate }) => estimate !== null).map(({ stored }) => stored);
  if (ki === null || slope === null || times.length === 0) return [];
  const [first, last] = [Math.min(...times), Math.max(...times)];
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const stored = first + ((last - first) * step) / STEPS;
    return { stored, percent: 100 * normalCdf(ki + slope * stored) };
  });
}
