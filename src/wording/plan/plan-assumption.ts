import type { PlanDesign } from '../../analysis/planning/plan-design.ts';
import { luckOfTwo } from '../../statistics/luck-of-two.ts';
import { planAmounts, type PlanSpeech } from './plan-amounts.ts';

/**
 * What a plan takes for granted about how trays vary, with its number.
 *
 * @param unit of a trait: "mm", "g"; empty otherwise
 */
export function planAssumption(design: PlanDesign, unit: string, { say, number }: PlanSpeech): string {
  const { ofSize } = planAmounts(design.measure, unit, { say, number });
  const { measure, base, seeds, spread, timing } = design;
  if (timing !== null) {
    const { every, seedSpread, germination } = timing;
    return say('answer.assumed.t50', {
      spread: ofSize(spread),
      seedSpread: ofSize(seedSpread),
      germination: number(germination),
      every: ofSize(every),
    });
  }
  if (measure !== 'germination') return say('answer.assumed.trait', { spread: number(spread), unit });
  const { most } = luckOfTwo(base / 100, seeds, seeds, spread);
  return say(spread === 1 ? 'answer.assumed.even' : 'answer.assumed.germination', {
    phi: number(spread),
    seeds: say('answer.seeds', { count: number(seeds) }),
    most: number(Math.min(100, Math.ceil(100 * most - 1e-9))),
  });
}
