/**
 * How long one analysis takes after start-up: 4 lots × 2 treatments × 4 sowings, 8 count days, germination,
 * T50 and height, invented numbers. Processor time, so that other work on the machine does not count. `node tests/bench/analyse.ts`; the median must stay under 10 ms.
 */
import { analyse } from '../../src/analysis/analyse.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTrial } from '../support/make-trial.ts';

const LIMIT = 10;
const DAYS = [3, 4, 5, 6, 8, 10, 12, 14];

function syntheticTrial(): Trial {
  const random = seededRandom('bench');
  const lots = ['a', 'b', 'c', 'd'].map((id) => makeLot(id));
  const sowings = lots.flatMap(({ id }) =>
    ['packet', 'jar'].flatMap((treatment) =>
      [1, 2, 3, 4].map((number) => makeSowing(`${id}-${treatment}-${number}`, treatment, { lot: id })),
    ),
  );
  const counts = sowings.flatMap(({ id }) => {
    let germinated = 0;
    return DAYS.map((day) => {
      germinated += Math.floor(random() * (50 - germinated) * 0.5);
      return makeCount(id, day, germinated);
    });
  });
  const measurements = sowings.flatMap(({ id }) =>
    Array.from({ length: 20 }, (_, index) => ({
      sowing: id,
      day: 14,
      plant: String(index + 1),
      values: { height: 30 + Math.round(random() * 20) },
      line: 2,
    })),
  );
  const outcomes = [
    makeOutcome({ matters: 5 }),
    makeOutcome({ id: 't50', measure: 't50', day: null, matters: 1, primary: false }),
    makeOutcome({ id: 'height', measure: 'trait', column: 'height', matters: 5, primary: false }),
  ];
  return makeTrial({ lots, sowings, counts, measurements, outcomes, traits: [{ column: 'height', unit: 'mm' }] });
}

const trial = syntheticTrial();
const times = Array.from({ length: 60 }, () => {
  const before = process.cpuUsage();
  analyse(trial);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
});
const warm = times.slice(20).sort((a, b) => a - b);
const median = warm[Math.floor(warm.length / 2)] ?? NaN;
console.log(`analyse: median ${median.toFixed(1)} ms (limit ${LIMIT} ms), first ${times[0]?.toFixed(1)} ms`);
process.exit(median < LIMIT ? 0 : 1);
