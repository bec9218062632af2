import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Comparison, Result } from '../../src/analysis/analysis.ts';
import type { Measurement, Measure, Sowing, Trial, Weighing } from '../../src/trial/trial.ts';
import { expectClose } from '../support/close.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTrial } from '../support/make-trial.ts';

const first = (trial: Trial): Result => {
  const [result] = analyse(trial).results;
  if (result === undefined) throw new Error('no result');
  return result;
};
const only = (trial: Trial): Comparison => {
  const [comparison] = first(trial).comparisons;
  if (comparison === undefined) throw new Error('no comparison');
  return comparison;
};

/** Heights of plants, a list a sowing; a plain number is one measurement of the whole sowing. */
type Heights = Readonly<Record<string, readonly (number | readonly number[])[]>>;

function heightTrial(heights: Heights, parts: Partial<Trial> = {}, sowingParts: Partial<Sowing> = {}): Trial {
  const rows = Object.entries(heights).flatMap(([treatment, units]) =>
    units.map((plants, index) => ({ id: `${treatment}${index + 1}`, treatment, plants })),
  );
  return makeTrial({
    outcomes: [makeOutcome({ id: 'height', measure: 'trait', column: 'height' })],
    traits: [{ column: 'height', unit: 'mm' }],
    sowings: rows.map(({ id, treatment }) => makeSowing(id, treatment, sowingParts)),
    measurements: rows.flatMap(({ id, plants }): readonly Measurement[] =>
      typeof plants === 'number'
        ? [{ sowing: id, day: 14, plant: null, values: { height: plants }, line: 2 }]
        : plants.map((height, plant) => ({ sowing: id, day: 14, plant: String(plant), values: { height }, line: 2 })),
    ),
    ...parts,
  });
}

test('plants are averaged within a sowing first, however many there are', () => {
  const result = first(heightTrial({ packet: [[10, 20], [30]], jar: [[40, 40, 40], [50]] })); // prettier-ignore
  expect(result.groups.map(({ estimate, plants, seeds, count }) => [estimate, plants, seeds, count])).toEqual([
    [22.5, 3, null, null],
    [45, 4, null, null],
  ]);
  expectClose(result.comparisons[0]?.estimate, 22.5);
});

test('sowings of one tray are averaged weighted by plants', () => {
  const trial = heightTrial({ packet: [[10, 20, 30], [40], [25]], jar: [[40], [50]] }); // prettier-ignore
  const sowings = trial.sowings.map((sowing) => (/packet[12]/.test(sowing.id) ? { ...sowing, tray: 'T' } : sowing));
  const [packet] = first({ ...trial, sowings }).groups;
  expect([packet?.unit, packet?.units, packet?.sowings, packet?.estimate]).toEqual(['tray', 2, 3, 25]);
});

test('one sowing of a treatment: means and the spread between plants only', () => {
  const result = first(heightTrial({ packet: [[10, 20]], jar: [[40, 44]] }));
  expect(result.groups[0]).toMatchObject({ estimate: 15, sd: null, interval: null, icc: null });
  expectClose(result.groups[0]?.plantSd, Math.sqrt(50));
  expect(result.comparisons[0]).toMatchObject({
    estimate: 27,
    interval: null,
    test: null,
    effects: { hedgesG: null, hodgesLehmann: null },
    verdict: 'untestable',
    repeatWith: null,
  });
});

test('sowings measured as a whole tell nothing about plants', () => {
  const [group] = first(heightTrial({ packet: [12, 14], jar: [15, 18] })).groups;
  expect(group).toMatchObject({ estimate: 13, plants: 2, icc: null, plantSd: null });
});

test('readings too coarse to show a spread give the difference and nothing else', () => {
  const comparison = only(heightTrial({ packet: [[10], [10], [10]], jar: [[12], [12], [12]] }));
  expect(comparison).toMatchObject({
    estimate: 2,
    interval: null,
    test: null,
    permutation: null,
    detectable: null,
    effects: { hedgesG: null, hodgesLehmann: 2 },
    verdict: 'unclear',
  });
});

test('within blocks as well: differences that are all the same', () => {
  const trial = heightTrial({ packet: [[10.1], [12.3], [14.7]], jar: [[10.4], [12.6], [15.0]] });
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, block: sowing.id.slice(-1) }));
  const comparison = only({ ...trial, sowings });
  expect(comparison).toMatchObject({ interval: null, test: null, verdict: 'unclear', units: { kind: 'block' } });
  expectClose(comparison.estimate, 0.3, 1e-12);
});

test('several sowings of a treatment in one block are averaged first', () => {
  const trial = heightTrial({ packet: [[10], [12], [20], [22], [30]], jar: [[15], [20], [31]] });
  const block: Readonly<Record<string, string>> = { packet1: 'a', packet2: 'a', packet3: 'b', packet4: 'b', packet5: 'c', jar1: 'a', jar2: 'b', jar3: 'c' }; // prettier-ignore
  const comparison = only({
    ...trial,
    sowings: trial.sowings.map((sowing) => ({ ...sowing, block: block[sowing.id] ?? null })),
  });
  expectClose(comparison.estimate, (4 - 1 + 1) / 3);
  expect(comparison.test?.method).toBe('paired-t');
});

test('a sowing not measured on the day is left out; an earlier measurement does not stand in for it', () => {
  const trial = heightTrial({ packet: [[10], [12], [14]], jar: [[20], [22], [24]] });
  const measurements = trial.measurements.map((row) => (row.sowing === 'jar3' ? { ...row, day: 11 } : row));
  const result = first({ ...trial, measurements });
  expect(result.leftOut).toEqual([{ sowing: 'jar3', reason: 'not-measured', what: null }]);
  expect(result.comparisons[0]).toMatchObject({ estimate: 21 - 12, withLeftOut: null });
});

test('a deviation is out of a trait and shown with it in', () => {
  const events = [{ day: 6, date: null, sowings: ['jar3'], what: 'eaten', action: 'left-out' as const }];
  const comparison = only(heightTrial({ packet: [[10], [12], [14]], jar: [[20], [22], [3]] }, { events }));
  expect([comparison.estimate, comparison.withLeftOut?.estimate]).toEqual([9, 3]);
});

/** Totals by check day for each sowing. */
function speedTrial(
  measure: Measure,
  totals: Readonly<Record<string, readonly Readonly<Record<number, number>>[]>>,
  parts: Partial<Trial> = {},
): Trial {
  const rows = Object.entries(totals).flatMap(([treatment, sowings]) =>
    sowings.map((checks, index) => ({ id: `${treatment}${index + 1}`, treatment, checks })),
  );
  return makeTrial({
    outcomes: [makeOutcome({ id: measure, measure, day: null, matters: 1 })],
    sowings: rows.map(({ id, treatment }) => makeSowing(id, treatment)),
    counts: rows.flatMap(({ id, checks }) =>
      Object.entries(checks).map(([day, total]) => makeCount(id, Number(day), total)),
    ),
    ...parts,
  });
}

test('t50 by hand: half of 40 lies between 10 on day 4 and 30 on day 6', () => {
  const result = first(
    speedTrial('t50', {
      packet: [{ 4: 10, 6: 30, 8: 40 }, { 4: 8, 6: 28, 8: 40 }],
      jar: [{ 4: 20, 6: 30, 8: 38 }, { 4: 0, 6: 30, 8: 40 }],
    }), // prettier-ignore
  );
  expect(result.day).toBeNull();
  expect(result.days).toEqual({ leek: 8 });
  expect(result.unit).toBe('days');
  expect(result.values.map(({ value }) => value)).toEqual([5, 5.2, null, 4 + (20 / 30) * 2]);
});

test('half before the first check: that sowing has no time, the group no mean, and only the bracket is said', () => {
  const result = first(
    speedTrial('t50', {
      packet: [{ 4: 10, 6: 30, 8: 40 }, { 4: 8, 6: 28, 8: 40 }],
      jar: [{ 4: 30, 6: 36, 8: 38 }, { 4: 18, 6: 30, 8: 40 }],
    }), // prettier-ignore
  );
  expect(result.groups[1]).toMatchObject({ estimate: null, sd: null, interval: null, bracket: { after: 0, by: 4 } });
  expect(result.comparisons[0]).toMatchObject({
    estimate: null,
    interval: null,
    test: null,
    bracket: { lower: 0 - 6, upper: 4 - 4 },
    verdict: 'unclear',
  });
});

test('without replication the bracket is all that is known of a lag', () => {
  const comparison = only(speedTrial('t50', { packet: [{ 3: 2, 5: 10, 8: 40 }], jar: [{ 3: 2, 5: 30, 8: 40 }] }));
  expect(comparison).toMatchObject({ verdict: 'untestable', interval: null, bracket: { lower: 3 - 8, upper: 5 - 5 } });
});

test('a sowing in which nothing germinated has no time and is left out', () => {
  const result = first(
    speedTrial('t50', {
      packet: [{ 4: 10, 6: 30, 8: 40 }, { 4: 0, 6: 0, 8: 0 }, { 4: 8, 6: 28, 8: 40 }],
      jar: [{ 4: 10, 6: 30, 8: 38 }, { 4: 12, 6: 30, 8: 40 }],
    }), // prettier-ignore
  );
  expect(result.leftOut).toEqual([{ sowing: 'packet2', reason: 'nothing-germinated', what: null }]);
  expect(result.groups[0]?.units).toBe(2);
});

test('but it has a rate, which is zero', () => {
  const result = first(
    speedTrial('maguire', { packet: [{ 4: 0 }, { 4: 10 }], jar: [{ 4: 20 }, { 4: 10 }] }), // prettier-ignore
  );
  expect(result.values.map(({ value }) => value)).toEqual([0, 5, 10, 5]);
  expect(result.unit).toBe('seeds per day per 100 sown');
});

test('counts on day 0 count nothing', () => {
  const result = first(speedTrial('mgt', { packet: [{ 0: 0, 4: 10 }, { 0: 0, 4: 5, 8: 10 }], jar: [{ 4: 20 }, { 4: 10, 8: 20 }] })); // prettier-ignore
  expect(result.groups).toHaveLength(2);
});

const coarse = {
  packet: [{ 3: 2, 6: 34, 9: 40 }, { 3: 2, 6: 36, 9: 40 }, { 3: 2, 6: 35, 9: 40 }],
  jar: [{ 3: 1, 6: 30, 9: 40 }, { 3: 1, 6: 31, 9: 40 }, { 3: 1, 6: 32, 9: 40 }],
} as const; // prettier-ignore

test('coarse checks: the interval takes in the bracket at both levels, and Welch’s own is kept for `different`', () => {
  const comparison = only(speedTrial('t50', coarse));
  const { interval, welch, equivalence, bracket } = comparison;
  expect(bracket).toEqual({ lower: -3, upper: 3 }); // both between the checks of day 3 and day 6
  expect(interval).toEqual({ level: 0.95, lower: -3, upper: 3, method: 'welch-bracket' });
  expect(equivalence?.interval).toEqual({ level: 0.9, lower: -3, upper: 3 });
  expect(welch?.lower).toBeGreaterThan(0); // the jar is later, by how much the checks cannot say
  expect(comparison.verdict).toBe('different');
});

test('with coarse checks nothing is the same unless the checks allow it; mean time and spread never are', () => {
  const outcome = (measure: Measure, matters: number) => [makeOutcome({ id: measure, measure, day: null, matters })];
  const alike = { packet: coarse.packet, jar: coarse.packet };
  const verdict = (measure: Measure, matters: number) =>
    only(speedTrial(measure, alike, { outcomes: outcome(measure, matters) })).verdict;
  expect([verdict('t50', 2), verdict('t50', 3)]).toEqual(['unclear', 'same']);
  expect([verdict('mgt', 3), verdict('spread', 3)]).toEqual(['unclear', 'unclear']);
});

test('a spread has a bracket of its own; with coarse checks it differs only where the checks allow nothing else', () => {
  const days = (...checks: readonly (readonly [number, number])[]) =>
    [0, 1, 2].map((more) => Object.fromEntries(checks.map(([day, total]) => [day, total === 20 ? 20 + more : total])));
  const daily = days([4, 0], [5, 20], [6, 50]);
  // The same two days of coming up, met by wide gaps: later, but not known to be less even.
  const shifted = first(speedTrial('spread', { packet: daily, jar: days([6, 0], [14, 38], [22, 50]) }));
  expect(shifted.groups.map(({ bracket }) => bracket)).toEqual([
    { after: 0, by: 2 }, // a quarter in (4, 5], three quarters in (5, 6]
    { after: 0, by: 8 }, // both in (6, 14]
  ]);
  expect(shifted.comparisons[0]).toMatchObject({ verdict: 'unclear', bracket: { lower: -2, upper: 8 } });
  expect(shifted.comparisons[0]?.welch?.lower).toBeGreaterThan(1); // which alone would have called it `matters`

  const apart = only(speedTrial('spread', { packet: daily, jar: days([4, 0], [6, 20], [14, 22], [22, 24], [30, 50]) }));
  expect(apart).toMatchObject({ verdict: 'matters', bracket: { lower: 14, upper: 26 } });
});

test('checks are coarse for t50 only where the gap that holds half holds more than 0.6', () => {
  const fine = { 3: 2, 6: 26, 9: 40 }; // 24 of 40 is 0.6, not more
  const sowings = [fine, { ...fine, 3: 3 }, { ...fine, 3: 4 }];
  expect(only(speedTrial('t50', { packet: sowings, jar: sowings })).interval?.method).toBe('welch');
});

test('fewer than five seeds have no speed to compare', () => {
  const few = [{ 3: 0, 6: 1 }, { 3: 0, 6: 1 }]; // prettier-ignore
  expect(only(speedTrial('maguire', { packet: few, jar: few })).verdict).toBe('unclear');
});

const weighing = (treatment: string | null, batch: string | null, stage: Weighing['stage'], mass: number, repeat: string | null = null): Weighing => ({ lot: 'leek', treatment, stage, mass, container: null, repeat, scaleStep: null, batch, date: null, line: 2 }); // prettier-ignore
const dried = (treatment: string, batch: string | null, after: number, repeat: string | null = null) => [
  weighing(treatment, batch, 'before', 100, repeat),
  weighing(treatment, batch, 'after', after, repeat),
];
const moistureOutcome = [makeOutcome({ id: 'dry', measure: 'moisture', day: null })];

test('water lost is compared by batch; repeats of a batch are averaged', () => {
  const weighings = [
    ...dried('packet', 'p1', 99),
    ...dried('packet', 'p2', 98, 'a'),
    ...dried('packet', 'p2', 96, 'b'),
    ...dried('jar', 'j1', 94),
    ...dried('jar', 'j2', 93),
  ];
  const result = first(makeTrial({ outcomes: moistureOutcome, weighings }));
  expect(result.unit).toBe('% of mass lost');
  expect(result.values.map(({ unit, value }) => [unit, value])).toEqual([['p1', 1], ['p2', 3], ['j1', 6], ['j2', 7]]); // prettier-ignore
  expect(result.comparisons[0]).toMatchObject({
    estimate: 4.5,
    unit: 'percentage points',
    test: { method: 'welch-t' },
    units: { treatment: 2, control: 2, kind: 'batch' },
  });
});

test('moisture content is compared where it is known of every batch', () => {
  const lots = [{ ...makeLot('leek'), moisture: 10 }];
  const weighings = [...dried('packet', 'p1', 99), ...dried('jar', 'j1', 94)];
  const result = first(makeTrial({ lots, outcomes: moistureOutcome, weighings }));
  expect(result.unit).toBe('% wet basis');
  expectClose(result.values[1]?.value, 100 - (90 * 100) / 94, 1e-12);
});

test('weighings that name no batch are one unit and cannot be tested', () => {
  const weighings = [
    ...dried('packet', null, 99, 'a'),
    ...dried('packet', null, 98, 'b'),
    ...dried('jar', null, 94, 'a'),
    ...dried('jar', null, 93, 'b'),
  ];
  expect(only(makeTrial({ outcomes: moistureOutcome, weighings }))).toMatchObject({
    verdict: 'untestable',
    estimate: 5,
    units: { treatment: 1, control: 1 },
  });
});
