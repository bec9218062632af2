import { describe, expect, test } from 'vitest';
import { addSums } from '../../../src/analysis/planning/add-sums.ts';
import { closedForm } from '../../../src/analysis/planning/closed-form.ts';
import { planDesign, type PlanDesign } from '../../../src/analysis/planning/plan-design.ts';
import { simulatePlan } from '../../../src/analysis/planning/simulate-plan.ts';
import { simulated, type Chances, type Rate } from '../../../src/analysis/planning/simulated.ts';
import { r } from '../../support/r.ts';

const germination = (parts: Partial<PlanDesign>) =>
  planDesign({ measure: 'germination', base: 80, matters: 10, units: 4, ...parts });

function chances(design: PlanDesign, count: number): Chances {
  const { crop } = simulated(simulatePlan(design, { seed: 'test', from: 0, count }));
  if (crop === null) throw new Error('nothing was simulated');
  return crop;
}

/** Within 4 Monte Carlo errors, those of the expected value (20 000 trials in R) counted in. */
const near = ({ share, error }: Rate, expected: number, trials = 20_000) =>
  expect(Math.abs(share - expected), `${share} ± ${error}, expected ${expected}`).toBeLessThan(
    4 * Math.hypot(error, Math.sqrt((expected * (1 - expected)) / trials) + 0.0005),
  );

test.each([
  [2, 4, 90, 0.986, 0.02],
  [3, 1, 90, 0.995, 0.006],
  [3, 4, 90, 0.963, 0.042],
  [4, 1, 50, 0.987, 0.013],
  [4, 2, 90, 0.967, 0.036],
  [4, 4, 50, 0.947, 0.052],
  [4, 4, 97, 0.987, 0.022],
  [8, 2, 90, 0.956, 0.046],
])(
  '%s trays of 50, φ %s, %s of 100: covers %s, false alarms %s as in methods.md 2',
  (units, spread, base, covers, alarms) => {
    const found = chances(germination({ units, spread, base, matters: 2 }), 3000);
    near(found.coveredNone, covers);
    near(found.smallP, alarms);
  },
);

describe('power against R', () => {
  test.each([
    [6, 4, 5],
    [12, 3, 3],
    [20, 10, 8],
  ])('%s trays of each, means: power.t.test', async (units, spread, matters) => {
    const design = planDesign({ measure: 'trait', base: 40, units, spread, matters });
    const [power = NaN] = await r(
      `power.t.test(n = ${units}, delta = ${matters}, sd = ${spread}, strict = TRUE)$power`,
    );
    expect(Math.abs((closedForm(design).crop?.power ?? NaN) - power)).toBeLessThan(1e-7);
    const { shown } = chances(design, 4000);
    // Welch's test gives a little away where the two spreads are alike.
    expect(shown.share).toBeGreaterThan(power - 0.015 - 4 * shown.error);
    expect(shown.share).toBeLessThan(power + 4 * shown.error);
  });

  test('seeds that are all independent, in many trays: power.prop.test', async () => {
    const design = germination({ base: 60, matters: 10, units: 40, seeds: 10, spread: 1 });
    const [power = NaN] = await r('power.prop.test(n = 400, p1 = 0.6, p2 = 0.5)$power');
    expect(Math.abs((closedForm(design).crop?.power ?? NaN) - power)).toBeLessThan(0.03);
    expect(Math.abs(chances(design, 1500).shown.share - power)).toBeLessThan(0.06);
  });
});

test.each<[string, PlanDesign]>([
  ['germination', germination({ base: 60, matters: 20, units: 5 })],
  ['uneven trays', germination({ base: 60, matters: 30, units: 6, spread: 4 })],
  ['blocks', germination({ base: 60, matters: 20, units: 6, inBlocks: true })],
  ['heights', planDesign({ measure: 'trait', base: 40, matters: 7, units: 5 })],
  ['times, checked daily', planDesign({ measure: 't50', base: 8, matters: 1.5, units: 5 })],
])('%s: formula and simulation agree', (_name, design) => {
  const { crop } = closedForm(design);
  const { shown, halfWidth } = chances(design, 1500);
  expect(Math.abs(shown.share - (crop?.power ?? NaN))).toBeLessThan(0.05 + 3 * shown.error);
  expect(Math.abs(halfWidth.value / (crop?.halfWidth ?? NaN) - 1)).toBeLessThan(0.08);
});

test('several crops: together the range is narrower, and Holm keeps false alarms of all crops down', () => {
  const design = germination({ base: 50, matters: 20, units: 4, spread: 4, crops: 6 });
  const { crop, together, anyAlarm, anyFirmAlarm } = simulated(simulatePlan(design, { seed: 1, from: 0, count: 500 }));
  expect(together?.halfWidth.value).toBeLessThan((crop?.halfWidth.value ?? NaN) / 2);
  expect(together?.shown.share).toBeGreaterThan(crop?.shown.share ?? NaN);
  expect(anyAlarm.share).toBeGreaterThan(0.15);
  expect(anyFirmAlarm.share).toBeLessThan(0.05 + 4 * anyFirmAlarm.error);
});

test('one tray of each: nothing for one crop, something for three together', () => {
  const one = (crops: number) =>
    simulated(simulatePlan(germination({ units: 1, crops }), { seed: 1, from: 0, count: 50 }));
  expect([one(1).crop, one(1).together, one(2).together]).toEqual([null, null, null]);
  expect(one(3).crop).toBeNull();
  expect(one(3).together?.halfWidth.value).toBeGreaterThan(0);
});

test('any split of the trials gives the same, and another seed something else', () => {
  const design = germination({ crops: 2 });
  const whole = simulatePlan(design, { seed: 'a', from: 0, count: 60 });
  const parts = [0, 20, 45].map((from, index) =>
    simulatePlan(design, { seed: 'a', from, count: [20, 25, 15][index] ?? 0 }),
  );
  expect(simulated(parts.reduce(addSums))).toEqual({
    ...simulated(whole),
    crop: expect.objectContaining({ shown: simulated(whole).crop?.shown }),
    together: expect.objectContaining({ shown: simulated(whole).together?.shown }),
  });
  expect(parts.reduce(addSums).there.crops.width).toBeCloseTo(whole.there.crops.width, 8);
  expect(simulatePlan(design, { seed: 'b', from: 0, count: 60 })).not.toEqual(whole);
});
