import type { Comparison, Result } from './analysis.ts';
import { groupsOf } from './groups-of.ts';

/** Fewer than 5 came up in both together (methods.md 7). */
export function hardlyAny(result: Result, comparison: Comparison): boolean {
  const { treatment, control } = groupsOf(result, comparison);
  if (result.measure !== 'germination' || !treatment || !control) return false;
  return (treatment.count ?? Infinity) + (control.count ?? Infinity) < 5;
}
