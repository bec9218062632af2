import { expect, test } from 'vitest';
import { closedForm } from '../../../src/analysis/planning/closed-form.ts';
import { designFaults } from '../../../src/analysis/planning/design-faults.ts';
import { planAnswer } from '../../../src/analysis/planning/plan-answer.ts';
import { planDesign, type PlanDesign } from '../../../src/analysis/planning/plan-design.ts';
import { spreadChoices } from '../../../src/analysis/planning/spread-choices.ts';
import { treatedValue } from '../../../src/analysis/planning/treated-value.ts';
import { unitsNeeded } from '../../../src/analysis/planning/units-needed.ts';
import { expectClose } from '../../support/close.ts';

const germination = (parts: Partial<PlanDesign> = {}) =>
  planDesign({ measure: 'germination', base: 60, matters: 15, units: 4, ...parts });
const times = (parts: Partial<PlanDesign> = {}) =>
  planDesign({ measure: 't50', base: 6, matters: 1, units: 4, ...parts });

test('the answer holds the assumption, formula and simulation, the same each time', () => {
  const answer = planAnswer(germination(), { trials: 200 });
  expect(answer.treated).toBe(45);
  expect(answer.closed.smallestP).toBe(2 / 70);
  expect(answer.simulated?.trials).toBe(200);
  expect(answer.needed).toBe(8);
  expect(planAnswer(germination(), { trials: 200 })).toEqual(answer);
  expect(planAnswer(germination(), { trials: 200, seed: 2 }).simulated).not.toEqual(answer.simulated);
});

test('progress is told after every hundred trials', () => {
  const told: number[] = [];
  planAnswer(germination(), { trials: 250, onProgress: (done, all) => told.push(done / all) });
  expect(told).toEqual([0.4, 0.8, 1]);
});

test('a difference just detectable is shown 4 times in 5, and the proposal is the first number that does', () => {
  const detectable = closedForm(germination()).crop?.detectable ?? NaN;
  expectClose(closedForm(germination({ matters: detectable })).crop?.power, 0.8);
  const needed = unitsNeeded(germination()) ?? NaN;
  expect(closedForm(germination({ units: needed })).crop?.power).toBeGreaterThanOrEqual(0.8);
  expect(closedForm(germination({ units: needed - 1 })).crop?.power).toBeLessThan(0.8);
  expect(unitsNeeded(germination({ matters: 1 }))).toBeNull();
  expect(unitsNeeded(germination({ matters: 40 }))).toBe(3);
});

test.each([
  [60, 15, 45],
  [30, 15, 45],
  [50, 10, 60],
  [95, 10, 85],
  [5, 10, 15],
  [50, 50, 100],
  [50, 51, null],
])('of %s in 100, %s more or fewer: worked out with %s', (base, matters, treated) => {
  expect(treatedValue(germination({ base, matters }))).toBe(treated);
});

test('times are worked out earlier where there is room, traits with more', () => {
  expect(treatedValue(times())).toBe(5);
  expect(treatedValue(times({ matters: 7 }))).toBe(13);
  expect(treatedValue(planDesign({ measure: 'trait', base: 40, matters: 50, units: 3 }))).toBe(90);
});

test('plain choices of spread have their number', () => {
  expect(spreadChoices('germination', 80).map(({ spread }) => spread)).toEqual([1, 2, 4]);
  expect(spreadChoices('trait', 40)).toEqual([
    { choice: 'even', spread: 2 },
    { choice: 'usual', spread: 4 },
    { choice: 'uneven', spread: 8 },
  ]);
  expect(planDesign({ measure: 'trait', base: 40, matters: 5, units: 4 }).spread).toBe(4);
});

const timing = { every: 1, seedSpread: 1.5, germination: 80 };
test.each<[string, PlanDesign, readonly string[]]>([
  ['a whole plan', germination(), []],
  ['nothing and everything', germination({ base: 0, matters: 0 }), ['base', 'matters']],
  ['all of them', germination({ base: 100 }), ['base']],
  ['no room either way', germination({ matters: 70 }), ['no-room']],
  ['half a tray', germination({ units: 2.5, seeds: 0, crops: NaN }), ['units', 'seeds', 'crops']],
  ['too many to wait for', germination({ units: 51, seeds: 1001, crops: 21 }), ['units', 'seeds', 'crops']],
  ['less than seed luck', germination({ spread: 0.5 }), ['spread']],
  ['trays that vary more than their seeds can', germination({ seeds: 4, spread: 4 }), ['spread-above-seeds']],
  ['no spread of heights', planDesign({ measure: 'trait', base: 4, matters: 1, units: 3, spread: 0 }), ['spread']],
  ['checks after all is over', times({ timing: { ...timing, every: 7 } }), ['every-late']],
  ['checks without end', times({ timing: { ...timing, every: 0.01 } }), ['every']],
  ['times of nothing', times({ timing: { ...timing, germination: 0 } }), ['germination']],
])('%s: what is wrong with it', (_name, design, faults) => {
  expect(designFaults(design)).toEqual(faults);
  if (faults.length > 0) expect(() => planAnswer(design)).toThrow(RangeError);
});

test.each<[PlanDesign, readonly string[]]>([
  [germination({ units: 12 }), []],
  [germination({ units: 1 }), ['one-tray']],
  [germination({ units: 2 }), ['seldom-shown', 'too-few-for-alike', 'shuffle-cannot']],
  [germination({ units: 7 }), ['often-missed']],
  [germination({ units: 12, base: 90 }), ['no-room-for-more']],
  [germination({ units: 12, crops: 3 }), ['many-crops']],
  [germination({ units: 4, seeds: 10, matters: 50, base: 50 }), ['few-seeds']],
  [times({ units: 12 }), []],
  [times({ units: 12, timing: { ...timing, every: 4 } }), ['coarse-checks', 'half-before-first-check']],
])('warns before sowing', (design, warnings) => {
  expect(planAnswer(design, { trials: 0 }).warnings).toEqual(warnings);
});
