import type { Heading } from '../csv/table.ts';

/** Whether a heading means a count day, well written or not: `day 3`, `2026-04-07`, `3`, `d3`, `3/4/26`. */
export function isDayHeading({ name }: Heading): boolean {
  return /^(day|d|t|tag)? ?-?\d/.test(name);
}
