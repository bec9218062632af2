import { normalCdf } from '../../statistics/distributions/normal.ts';
import type { PlanAnswer } from './plan-answer.ts';
import type { PlanDesign } from './plan-design.ts';

/** What a grower should know before sowing to this plan, most serious first. */
export type PlanWarning =
  | 'one-tray'
  | 'seldom-shown'
  | 'often-missed'
  | 'many-crops'
  | 'too-few-for-alike'
  | 'shuffle-cannot'
  | 'no-room-for-more'
  | 'few-seeds'
  | 'coarse-checks'
  | 'half-before-first-check';

/** Warnings of a plan that has been worked out; the chance of showing the difference by simulation where there is one. */
export function planWarnings(answer: Omit<PlanAnswer, 'warnings'>): readonly PlanWarning[] {
  const { design, closed, simulated } = answer;
  const { measure, base, matters, units, seeds, crops } = design;
  const power = simulated?.crop?.shown.share ?? closed.crop?.power ?? 1;
  const isCounted = measure !== 'trait';
  const all: readonly (readonly [PlanWarning, boolean])[] = [
    ['one-tray', units === 1],
    ['seldom-shown', power < 0.5],
    ['often-missed', power >= 0.5 && power < 0.8],
    ['many-crops', crops > 1],
    ['too-few-for-alike', units === 2],
    ['shuffle-cannot', units > 1 && closed.smallestP > 0.05],
    ['no-room-for-more', measure === 'germination' && base + matters > 100],
    ['few-seeds', isCounted && units * seeds < 50],
    ['coarse-checks', halfInOneGap(design) > 0.6],
    ['half-before-first-check', isHalfEarly(design)],
  ];
  return all.filter(([, applies]) => applies).map(([warning]) => warning);
}

/** Share of the seeds that come up within one gap between checks around the time to half (methods 5). */
const halfInOneGap = ({ timing }: PlanDesign): number =>
  timing === null ? 0 : 2 * normalCdf(timing.every / 2 / timing.seedSpread) - 1;

/** Trays, one in forty or more, of which half is up at the first check already: then there is no time (methods 5). */
const isHalfEarly = ({ base, matters, spread, timing }: PlanDesign): boolean =>
  timing !== null && (base > matters ? base - matters : base) - 2 * spread <= timing.every;
