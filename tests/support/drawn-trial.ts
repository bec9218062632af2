import { seededRandom } from '../../src/statistics/random.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTreatment, makeTrial } from './make-trial.ts';

export interface Design {
  readonly lots: number;
  readonly treatments: number;
  /** Sowings of each treatment in each lot. */
  readonly units: number;
  /** The first sowing of each treatment stands in block 1, the second in block 2, and so on. */
  readonly blocks?: boolean;
  /** Sowings that share a batch, of all treatments but the control. */
  readonly inBatch?: number;
  readonly days?: readonly number[];
}

/** A finished trial with drawn counts and heights and an outcome of every measure; ids and notes as awkward as they may be. */
export function drawnTrial(
  { lots, treatments, units, blocks = false, inBatch = 0, days = [3, 4, 6, 8, 11, 14] }: Design,
  seed: number,
): Trial {
  const random = seededRandom(seed);
  const lotIds = Array.from({ length: lots }, (_, index) => `lot-${index + 1}`);
  const treatmentIds = Array.from({ length: treatments }, (_, index) => `t${index}`);
  const sowings = lotIds.flatMap((lot) =>
    treatmentIds.flatMap((treatment, rank) =>
      Array.from({ length: units }, (_, index) =>
        makeSowing(`=${lot} "é" ${treatment}-${index + 1}`, treatment, {
          lot,
          seeds: 20 + Math.floor(random() * 3) * 5,
          block: blocks ? `-${index + 1}` : null,
          batch: inBatch > 0 && rank > 0 ? `${treatment}-${Math.floor(index / inBatch)}` : null,
        }),
      ),
    ),
  );
  const counts = sowings.flatMap(({ id, seeds, treatment }) => {
    let total = 0;
    const share = treatment === 't0' ? 0.25 : 0.4;
    return days.map((day) => {
      for (let left = (seeds ?? 0) - total; left > 0; left--) if (random() < share) total++;
      return makeCount(id, day, total, { note: '@said "so",\nand left' });
    });
  });
  const measurements = sowings.flatMap(({ id }) =>
    ['1', '2', '3'].map((plant) => ({
      sowing: id,
      day: 14,
      plant,
      values: { height: Math.round(400 + 200 * random()) / 10 },
      line: 2,
    })),
  );
  return makeTrial({
    lots: lotIds.map((id) => makeLot(id)),
    treatments: treatmentIds.map((id, index) => makeTreatment(id, { control: index === 0 })),
    outcomes: [
      makeOutcome({ matters: 10 }),
      ...(['t50', 'mgt', 'spread', 'maguire'] as const).map((measure) =>
        makeOutcome({ id: measure, measure, primary: false, matters: 1 }),
      ),
      makeOutcome({ id: 'height', measure: 'trait', column: 'height', primary: false }),
    ],
    traits: [{ column: 'height', unit: 'mm' }],
    sowings,
    counts,
    measurements,
  });
}
