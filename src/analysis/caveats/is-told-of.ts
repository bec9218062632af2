import type { Caveat } from '../analysis.ts';

/** Whether a caveat on a comparison speaks of this group, as its treatment or as its control. */
export function isToldOf(
  caveat: Caveat,
  { outcome, lot, treatment }: Pick<Caveat, 'outcome' | 'lot' | 'treatment'>,
): boolean {
  const isSide = caveat.treatment === treatment || caveat.evidence.control === treatment;
  return caveat.outcome === outcome && caveat.lot === lot && isSide;
}
