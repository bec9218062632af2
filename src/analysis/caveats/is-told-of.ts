import type { Caveat } from '../analysis.ts';

/** Whether a caveat on a comparison speaks of this group, as its treatment or as its control. */
export function isToldOf(caveat: Caveat, outcome: string, lot: string, treatment: string): boolean {
  const isSide = caveat.treatment === treatment || caveat.evidence.control === treatment;
  return caveat.outcome === outcome && caveat.lot === lot && isSide;
}
