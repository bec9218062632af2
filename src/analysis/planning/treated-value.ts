import type { PlanDesign } from './plan-design.ts';

/**
 * The value of the treatment with which a plan is worked out. Germination: of more and fewer, the way with room
 * that is harder to show (nearer to half and half, where seed luck is largest). Times: earlier where there is room.
 * Traits: more; both ways are alike.
 *
 * @returns in the unit of `base`; null where there is no room for such a difference either way
 */
export function treatedValue({ measure, base, matters }: PlanDesign): number | null {
  if (measure === 'trait') return base + matters;
  if (measure === 't50') return base > matters ? base - matters : base + matters;
  const ways = [base - matters, base + matters].filter((value) => value >= 0 && value <= 100);
  const [first, second] = ways.toSorted((a, b) => Math.abs(a - 50) - Math.abs(b - 50) || b - a);
  return first ?? second ?? null;
}
