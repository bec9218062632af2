import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Comparison, Group, Result } from '../../src/analysis/analysis.ts';
import type { Measure, Sowing, Trial } from '../../src/trial/trial.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTreatment, makeTrial } from '../support/make-trial.ts';
import { expectFigures, rFigures, vector } from '../support/r-figures.ts';

/** Heights of the plants of each unit, by treatment, in one lot. */
type Heights = Readonly<Record<string, readonly (readonly number[])[]>>;

const treatments = ['packet', 'jar', 'tin', 'cup'].map((id) => makeTreatment(id, { control: id === 'packet' }));
const heightOutcome = makeOutcome({ id: 'height', measure: 'trait', column: 'height', matters: 5 });

function heightTrial(lots: readonly Heights[], partsOf: (index: number) => Partial<Sowing> = () => ({})): Trial {
  const rows = lots.flatMap((lot, number) =>
    Object.entries(lot).flatMap(([treatment, units]) =>
      units.map((plants, index) => ({
        sowing: makeSowing(`${number}-${treatment}-${index}`, treatment, { lot: `lot${number}`, ...partsOf(index) }),
        plants,
      })),
    ),
  );
  return makeTrial({
    lots: lots.map((_, number) => makeLot(`lot${number}`)),
    treatments,
    outcomes: [heightOutcome],
    traits: [{ column: 'height', unit: 'mm' }],
    sowings: rows.map(({ sowing }) => sowing),
    measurements: rows.flatMap(({ sowing, plants }) =>
      plants.map((height, plant) => ({
        sowing: sowing.id,
        day: 14,
        plant: String(plant),
        values: { height },
        line: 2,
      })),
    ),
  });
}

const plants = fc.array(
  fc.integer({ min: 200, max: 900 }).map((height) => height / 10),
  { minLength: 2, maxLength: 6 },
);
const unitsOfPlants = (least: number, most: number) => fc.array(plants, { minLength: least, maxLength: most });
const average = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const meansInR = (units: readonly (readonly number[])[]) => vector(units.map(average));

const find = (result: Result | undefined, lot: string) =>
  result?.comparisons.find((comparison) => comparison.lot === lot && comparison.treatment === 'jar');

const common = (comparison: Comparison | undefined) => ({
  estimate: comparison?.estimate,
  lower: comparison?.interval?.lower,
  upper: comparison?.interval?.upper,
  lower90: comparison?.equivalence?.interval.lower,
  upper90: comparison?.equivalence?.interval.upper,
  statistic: comparison?.test?.statistic,
  df: Number(comparison?.test?.df),
  p: comparison?.test?.p,
});

const shuffled = (comparison: Comparison | undefined) => ({
  arrangements: comparison?.permutation?.arrangements,
  permutation: comparison?.permutation?.p,
});

const groupFigures = (group: Group | undefined, name: string) => ({
  [`${name} mean`]: group?.estimate,
  [`${name} sd`]: group?.sd,
  [`${name} lower`]: group?.interval?.lower,
  [`${name} upper`]: group?.interval?.upper,
});

const noncentral = { gLower: 1e-7, gUpper: 1e-7, detectable: 1e-7 };

function welchFigures(result: Result | undefined, lot: string) {
  const comparison = find(result, lot);
  const group = (id: string) => result?.groups.find((one) => one.lot === lot && one.treatment === id);
  return {
    ...common(comparison),
    g: comparison?.effects.hedgesG?.estimate,
    gLower: comparison?.effects.hedgesG?.lower,
    gUpper: comparison?.effects.hedgesG?.upper,
    shift: comparison?.effects.hodgesLehmann,
    ...shuffled(comparison),
    detectable: comparison?.detectable,
    ...groupFigures(group('jar'), 'jar'),
    ...groupFigures(group('packet'), 'packet'),
  };
}

test('every figure of means of units agrees with R', async () => {
  const trials = fc.sample(fc.record({ packet: unitsOfPlants(2, 6), jar: unitsOfPlants(2, 6) }), {
    numRuns: 60,
    seed: 20265,
  });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }) => `means(${meansInR(jar)}, ${meansInR(packet)})`),
  );
  for (const [index, trial] of trials.entries()) {
    const [result] = analyse(heightTrial([trial])).results;
    expectFigures(welchFigures(result, 'lot0'), expected[index] ?? [], noncentral);
  }
});

test('the number of units that would settle a difference of means agrees with R', async () => {
  const trials = fc.sample(fc.record({ packet: unitsOfPlants(2, 5), jar: unitsOfPlants(2, 5) }), {
    numRuns: 12,
    seed: 20274,
  });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }) => `units_needed_mean(5, ${meansInR(jar)}, ${meansInR(packet)})`),
  );
  for (const [index, trial] of trials.entries()) {
    const comparison = find(analyse(heightTrial([trial])).results[0], 'lot0');
    expectFigures({ units: comparison?.wouldSettle?.units }, expected[index] ?? []);
  }
});

test('likeness of plants within units and their spread agree with R', async () => {
  const groups = fc.sample(unitsOfPlants(2, 5), { numRuns: 40, seed: 20266 });
  const expected = await rFigures(
    'analysis.R',
    groups.map((units) => `icc(list(${units.map(vector).join()}))`),
  );
  for (const [index, packet] of groups.entries()) {
    const [group] = analyse(heightTrial([{ packet }])).results[0]?.groups ?? [];
    expectFigures({ icc: group?.icc, plantSd: group?.plantSd }, expected[index] ?? []);
  }
});

test('the overall F of more than two treatments agrees with R', async () => {
  const trials = fc.sample(
    fc.record({ packet: unitsOfPlants(1, 4), jar: unitsOfPlants(2, 4), tin: unitsOfPlants(2, 4) }),
    { numRuns: 40, seed: 20267 },
  );
  const expected = await rFigures(
    'analysis.R',
    trials.map((trial) => `overall(list(${Object.values(trial).map(meansInR).join()}))`),
  );
  for (const [index, trial] of trials.entries()) {
    const [overall] = analyse(heightTrial([trial])).results[0]?.overall ?? [];
    const figures = { statistic: overall?.statistic, df1: overall?.df[0], df2: overall?.df[1], p: overall?.p };
    expectFigures(figures, expected[index] ?? []);
  }
});

test('every figure of means within blocks agrees with R', async () => {
  const blocks = fc
    .integer({ min: 3, max: 8 })
    .chain((size) => fc.record({ packet: unitsOfPlants(size, size), jar: unitsOfPlants(size, size) }));
  const trials = fc.sample(blocks, { numRuns: 60, seed: 20268 });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }) => `means_blocks(${meansInR(jar)}, ${meansInR(packet)})`),
  );
  for (const [index, trial] of trials.entries()) {
    const [result] = analyse(heightTrial([trial], (number) => ({ block: `shelf ${number}` }))).results;
    const comparison = find(result, 'lot0');
    expect(comparison?.interval?.method).toBe('paired');
    expectFigures({ ...common(comparison), ...shuffled(comparison) }, expected[index] ?? []);
  }
});

test('every figure of means pooled over lots agrees with R', async () => {
  const lots = fc.array(fc.record({ packet: unitsOfPlants(2, 4), jar: unitsOfPlants(2, 4) }), {
    minLength: 2,
    maxLength: 4,
  });
  const trials = fc.sample(lots, { numRuns: 60, seed: 20269 });
  const lotInR = ({ packet, jar }: { packet: readonly (readonly number[])[]; jar: readonly (readonly number[])[] }) =>
    `list(t = ${meansInR(jar)}, c = ${meansInR(packet)})`;
  const expected = await rFigures(
    'analysis.R',
    trials.map((trial) => `means_pooled(list(${trial.map(lotInR).join()}))`),
  );
  for (const [index, trial] of trials.entries()) {
    const pooled = find(analyse(heightTrial(trial)).results[0], 'all');
    expectFigures(
      { ...common(pooled), lotsDiffer: pooled?.lotsDiffer?.statistic, lotsDifferP: pooled?.lotsDiffer?.p },
      expected[index] ?? [],
    );
  }
});

/** Newly germinated seeds at checks on days 2, 4, 7, 10 and 15; the first check finds none, so that no time is censored. */
const course = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 4, maxLength: 4 }).map((newly) => {
  const days = [2, 4, 7, 10, 15];
  const all = [0, ...newly];
  return days.map((day, index) => ({ day, total: all.slice(0, index + 1).reduce((sum, number) => sum + number, 0) }));
});
type Course = readonly { readonly day: number; readonly total: number }[];

const inR: Readonly<Partial<Record<Measure, (days: string, totals: string) => string>>> = {
  t50: (days, totals) => `time_to(${days}, ${totals}, 0.5)`,
  mgt: (days, totals) => `mean_time(${days}, ${totals})`,
  spread: (days, totals) => `time_to(${days}, ${totals}, 0.75) - time_to(${days}, ${totals}, 0.25)`,
  maguire: (days, totals) => `maguire(${days}, ${totals}, 50)`,
};

test.each(Object.entries(inR) as [Measure, (days: string, totals: string) => string][])(
  'every figure of %s agrees with R, from the counts on',
  async (measure, valueInR) => {
    const units = fc.array(course, { minLength: 2, maxLength: 5 });
    const trials = fc.sample(fc.record({ packet: units, jar: units }), { numRuns: 40, seed: 20270 });
    const sideInR = (side: readonly Course[]) =>
      `c(${side.map((one) => valueInR(vector(one.map(({ day }) => day)), vector(one.map(({ total }) => total)))).join()})`;
    const expected = await rFigures(
      'analysis.R',
      trials.map(({ packet, jar }) => `means(${sideInR(jar)}, ${sideInR(packet)})`),
    );
    for (const [index, { packet, jar }] of trials.entries()) {
      const rows = Object.entries({ packet, jar }).flatMap(([treatment, side]) =>
        side.map((checks, unit) => ({ sowing: makeSowing(`${treatment}${unit}`, treatment), checks })),
      );
      const trial = makeTrial({
        outcomes: [makeOutcome({ id: measure, measure, day: null, matters: 1 })],
        sowings: rows.map(({ sowing }) => sowing),
        counts: rows.flatMap(({ sowing, checks }) => checks.map(({ day, total }) => makeCount(sowing.id, day, total))),
      });
      const [result] = analyse(trial).results;
      // What coarse checks do to an interval is tested apart; here the figures before.
      const own = result && withoutHull(result);
      expectFigures(welchFigures(own, 'leek'), expected[index] ?? [], noncentral);
    }
  },
);

function withoutHull(result: Result): Result {
  const comparisons = result.comparisons.map((comparison) =>
    comparison.welch === null || comparison.equivalence === null
      ? comparison
      : { ...comparison, interval: { ...comparison.welch, method: 'welch' as const } },
  );
  return { ...result, comparisons };
}
