import { mean } from 'simple-statistics';
import { maguireRate } from '../../statistics/times/maguire-rate.ts';
import { meanGerminationTime } from '../../statistics/times/mean-germination-time.ts';
import { timeToShare } from '../../statistics/times/time-to-share.ts';
import type { Measure } from '../../trial/trial.ts';
import type { Unit } from '../units/unit.ts';
import { newlyGerminated } from './newly-germinated.ts';

/**
 * What is compared, for one unit: % of seeds sown, days, Maguire's rate per 100 seeds sown, or the mean
 * over plants (methods 1, 5, 6).
 *
 * @returns null where it cannot be computed: seeds not known, nothing germinated, or half of it
 *   (a quarter, for the spread) was there at the first check
 */
export function unitValue(measure: Measure, unit: Omit<Unit, 'value'>): number | null {
  const { seeds, count, checks, plants } = unit;
  switch (measure) {
    case 'germination':
    case 'storage':
      return count === null || seeds === null ? null : (100 * count) / seeds;
    case 't50':
      return timeToShare(newlyGerminated(checks), 0.5);
    case 'mgt':
      return meanGerminationTime(newlyGerminated(checks));
    case 'spread': {
      const newly = newlyGerminated(checks);
      const [early, late] = [timeToShare(newly, 0.25), timeToShare(newly, 0.75)];
      return early === null || late === null ? null : late - early;
    }
    case 'maguire':
      return seeds === null ? null : maguireRate(newlyGerminated(checks), seeds);
    case 'trait':
      return plants.length === 0 ? null : mean([...plants]);
    default:
      return null;
  }
}
