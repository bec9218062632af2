import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Comparison, Result } from '../../src/analysis/analysis.ts';
import type { Event, Trial } from '../../src/trial/trial.ts';
import { expectClose } from '../support/close.ts';
import {
  germinationTrial,
  makeCount,
  makeLot,
  makeOutcome,
  makeSowing,
  makeTreatment,
  makeTrial,
} from '../support/make-trial.ts';

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
const leftOut = (sowings: readonly string[], what = 'dropped'): Event => ({
  day: 6,
  date: null,
  sowings,
  what,
  action: 'left-out',
});

test('a planned or growing trial has no results; an abandoned one is analysed as far as it came', () => {
  const counts = { packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] } as const; // prettier-ignore
  expect(analyse(germinationTrial(counts, { status: 'planned' })).results).toEqual([]);
  expect(analyse(germinationTrial(counts, { status: 'growing' })).results).toEqual([]);
  expect(analyse(germinationTrial(counts, { status: 'abandoned' })).results).toHaveLength(1);
});

test('two trays each that agree by luck do not look sure: φ* holds the extra degree of freedom', () => {
  // Both groups without spread: X² = 0 on 2, so φ* = max(1, 2/3) = 1 and ν = 3.
  const comparison = only(germinationTrial({ packet: [[40, 50], [40, 50]], jar: [[45, 50], [45, 50]] })); // prettier-ignore
  expect(comparison.dispersion).toEqual({ phi: 0, df: 2, used: 1, dfUsed: 3 });
  expectClose(comparison.estimate, 10);
  // X²_P of 80/100 against 90/100 is 200·1000²/(170·30·100·100) = 3.921568…
  expectClose(comparison.test?.statistic, 200 / 51);
  expect(comparison.test?.df).toEqual([1, 3]);
  expect(comparison.verdict).toBe('unclear');
  expect(comparison.permutation).toBeNull(); // of 6 arrangements the most extreme has p = 1/3
});

test('all seeds in all trays: φ* is 2 on 2, no test statistic, nothing different', () => {
  const comparison = only(germinationTrial({ packet: [[50, 50], [50, 50]], jar: [[50, 50], [50, 50]] })); // prettier-ignore
  expect(comparison.dispersion).toEqual({ phi: null, df: 0, used: 2, dfUsed: 2 });
  expect([comparison.estimate, comparison.test?.statistic, comparison.test?.p]).toEqual([0, 0, 1]);
  expect(comparison.effects).toEqual({ riskRatio: 1, oddsRatio: null, cohensH: 0 });
  expect(comparison.verdict).toBe('unclear');
});

test('an empty cell adds half a seed to all four of the odds ratio, and says so', () => {
  const comparison = only(germinationTrial({ packet: [[0, 10], [0, 10]], jar: [[5, 10], [5, 10]] })); // prettier-ignore
  expect(comparison.halfAdded).toBe(true);
  expect(comparison.effects.riskRatio).toBeNull();
  expectClose(comparison.effects.oddsRatio, (10.5 * 20.5) / (10.5 * 0.5));
});

test('one tray of a treatment yields no verdict, no test and an interval of seed luck only', () => {
  const trial = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { outcomes: [makeOutcome({ matters: 5 })] });
  const comparison = only(trial);
  expect(comparison).toMatchObject({
    verdict: 'untestable',
    test: null,
    dispersion: null,
    permutation: null,
    detectable: null,
    wouldSettle: null,
    interval: { method: 'newcombe-seeds-only' },
    tipping: { rho: null, note: 'already' },
    equivalence: { margin: 5, fixedBeforehand: true, shown: false },
    units: { treatment: 1, control: 1, kind: 'sowing' },
  });
  expect(first(trial).groups.map(({ interval }) => interval?.method)).toEqual(['wilson-seeds-only', 'wilson-seeds-only']); // prettier-ignore
  expect(comparison.repeatWith?.difference).toBe(5);
});

test('a repeat is planned for 10 points where no margin was given', () => {
  const comparison = only(germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }));
  expect(comparison.repeatWith).toEqual({ units: 25, difference: 10 });
});

test('a large gap between single trays still yields no verdict; it says how alike seeds must be to explain it', () => {
  const comparison = only(germinationTrial({ packet: [[5, 50]], jar: [[48, 50]] }));
  expect(comparison.verdict).toBe('untestable');
  expect(comparison.tipping?.note).toBeNull();
  expect(comparison.tipping?.rho).toBeGreaterThan(0.1);
});

test('one tray of one treatment among many of the other is untestable as well', () => {
  const comparison = only(germinationTrial({ packet: [[40, 50], [42, 50], [44, 50]], jar: [[5, 50]] })); // prettier-ignore
  expect(comparison.verdict).toBe('untestable');
  expect(comparison.interval?.method).toBe('newcombe-seeds-only');
});

test('hardly any seed came up: unclear even where the margin or the difference would say more', () => {
  const outcomes = [makeOutcome({ matters: 10 })];
  const none = only(germinationTrial({ packet: [[0, 50], [1, 50], [1, 50]], jar: [[1, 50], [0, 50], [1, 50]] }, { outcomes })); // prettier-ignore
  expect(none.verdict).toBe('unclear');
  expect(none.equivalence?.shown).toBe(false);
});

test('a margin fixed beforehand, three trays and an interval inside it are the same; otherwise it is only shown', () => {
  const outcomes = [makeOutcome({ matters: 10 })];
  const alike = { packet: [[190, 200], [188, 200], [192, 200]], jar: [[191, 200], [189, 200], [190, 200]] } as const; // prettier-ignore
  expect(only(germinationTrial(alike, { outcomes })).verdict).toBe('same');

  const later = only(germinationTrial(alike, { outcomes, fixedBeforehand: null }));
  expect(later.verdict).toBe('unclear');
  expect(later.equivalence).toMatchObject({ margin: 10, fixedBeforehand: false, shown: true });

  const two = { packet: alike.packet.slice(0, 2), jar: alike.jar.slice(0, 2) };
  expect(only(germinationTrial(two, { outcomes })).verdict).toBe('unclear');
  expect(only(germinationTrial(alike)).equivalence).toBeNull();
});

test('seeds not known: counts are shown and nothing is compared', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] }); // prettier-ignore
  const result = first({ ...trial, sowings: trial.sowings.map((sowing) => ({ ...sowing, seeds: null })) });
  expect(result.comparisons).toEqual([]);
  expect(result.groups.map(({ count, seeds, estimate, interval, units }) => [count, seeds, estimate, interval, units])).toEqual([
    [82, null, null, null, 2],
    [93, null, null, null, 2],
  ]); // prettier-ignore
});

test('one sowing without a seed number is left out; its group is compared without it', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50], [9, 50]] }); // prettier-ignore
  const sowings = trial.sowings.map((sowing) => (sowing.id === 'leek-jar-3' ? { ...sowing, seeds: null } : sowing));
  const result = first({ ...trial, sowings });
  expect(result.leftOut).toEqual([{ sowing: 'leek-jar-3', reason: 'no-seed-number', what: null }]);
  expect(result.comparisons[0]?.units).toEqual({ treatment: 2, control: 2, kind: 'sowing' });
  expect(result.comparisons[0]?.withLeftOut).toBeNull();
});

test('a lot without the control, and a treatment that a lot lacks, have groups and no comparison', () => {
  const lots = [makeLot('leek'), makeLot('cress', 'cress', 'Lepidium sativum')];
  const leek = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] }); // prettier-ignore
  const cress = germinationTrial({ jar: [[45, 50], [48, 50]] }, {}, { lot: 'cress' }); // prettier-ignore
  const result = first({
    ...leek,
    lots,
    sowings: [...leek.sowings, ...cress.sowings],
    counts: [...leek.counts, ...cress.counts],
  });
  expect(result.groups.map(({ lot, treatment }) => `${lot} ${treatment}`)).toEqual([
    'leek packet',
    'leek jar',
    'cress jar',
  ]);
  expect(result.comparisons.map(({ lot }) => lot)).toEqual(['leek']);
});

test('a sowing not checked on the day is left out, and the last earlier count shown beside', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50], [41, 50]], jar: [[45, 50], [48, 50], [null, 50]] }); // prettier-ignore
  const result = first({ ...trial, counts: [...trial.counts, makeCount('leek-jar-3', 11, 20)] });
  const [comparison] = result.comparisons;
  expect(result.leftOut).toEqual([{ sowing: 'leek-jar-3', reason: 'not-checked', what: null }]);
  expectClose(comparison?.estimate, 100 * (93 / 100 - 123 / 150));
  expect(comparison?.withLeftOut?.sowings).toEqual(['leek-jar-3']);
  expectClose(comparison?.withLeftOut?.estimate, 100 * (113 / 150 - 123 / 150));
});

test('a sowing never counted is left out and cannot be shown with the others', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50], [null, 50]] }); // prettier-ignore
  const result = first(trial);
  expect(result.leftOut).toHaveLength(1);
  expect(result.comparisons[0]?.withLeftOut).toBeNull();
});

test('a sowing whose seeds had all germinated before needs no further check', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [null, 50]] }); // prettier-ignore
  const result = first({ ...trial, counts: [...trial.counts, makeCount('leek-jar-2', 8, 50)] });
  expect(result.leftOut).toEqual([]);
  expectClose(result.comparisons[0]?.estimate, 95 - 82);
});

test('a sowing left out by its authors is out, and the result with it in stands beside', () => {
  const trial = germinationTrial(
    { packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50], [10, 50]] }, // prettier-ignore
    { events: [leftOut(['leek-jar-3'], 'a third of the compost spilt')] },
  );
  const result = first(trial);
  const [comparison] = result.comparisons;
  expect(result.leftOut).toEqual([{ sowing: 'leek-jar-3', reason: 'deviation', what: 'a third of the compost spilt' }]);
  expectClose(comparison?.estimate, 93 - 82);
  expectClose(comparison?.withLeftOut?.estimate, 100 * (103 / 150) - 82);
  expect(comparison?.withLeftOut?.verdict).toBe('unclear');
  expect(comparison?.withLeftOut?.interval?.level).toBe(0.95);
});

test('a group left with one tray is untestable, one left with none has no number at all', () => {
  const counts = { packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] } as const; // prettier-ignore
  expect(only(germinationTrial(counts, { events: [leftOut(['leek-jar-1'])] })).verdict).toBe('untestable');

  const gone = first(germinationTrial(counts, { events: [leftOut(['leek-jar-1', 'leek-jar-2'])] }));
  expect(gone.groups[1]).toMatchObject({ units: 0, sowings: 0, count: null, estimate: null, interval: null });
  expect(gone.comparisons[0]).toMatchObject({ estimate: null, interval: null, verdict: 'untestable', test: null });
  expect(gone.comparisons[0]?.withLeftOut?.verdict).not.toBe('untestable');
});

test('the day of the outcome may differ by lot, and a lot without one uses its last common check', () => {
  const lots = [makeLot('leek'), makeLot('cress')];
  const sowings = ['leek', 'cress'].flatMap((lot) => ['packet', 'jar'].map((id) => makeSowing(`${lot}-${id}`, id, { lot }))); // prettier-ignore
  const counts = sowings.flatMap(({ id }) => [6, 14].map((day) => makeCount(id, day, 2 * day)));
  const result = first(makeTrial({ lots, sowings, counts, outcomes: [makeOutcome({ day: { cress: 6 } })] }));
  expect(result.day).toBeNull();
  expect(result.days).toEqual({ leek: 14, cress: 6 });
  expect(result.groups.map(({ lot, count }) => [lot, count])).toEqual([
    ['leek', 28],
    ['leek', 28],
    ['cress', 12],
    ['cress', 12],
  ]);
});

test('no outcomes listed: germination on the last count day and every measured column on its last day', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] }); // prettier-ignore
  const measurements = trial.sowings.flatMap(({ id }, index) =>
    [14, 21].map((day) => ({ sowing: id, day, plant: '1', values: { height: day + index, leaves: 2 }, line: 2 })),
  );
  const traits = [
    { column: 'height', unit: 'mm' },
    { column: 'leaves', unit: null },
  ];
  const { results } = analyse({ ...trial, outcomes: [], measurements, traits });
  expect(results.map(({ outcome, measure, primary, day, unit }) => [outcome, measure, primary, day, unit])).toEqual([
    ['germination', 'germination', true, 14, '%'],
    ['height', 'trait', false, 21, 'mm'],
    ['leaves', 'trait', false, 21, ''],
  ]);
});

test('every treatment is compared with the control; p-values are adjusted for their number', () => {
  const trial = germinationTrial(
    {
      packet: [[30, 50], [31, 50], [29, 50]],
      jar: [[45, 50], [44, 50], [46, 50]],
      tin: [[33, 50], [31, 50], [32, 50]],
    }, // prettier-ignore
    { treatments: [makeTreatment('packet', { control: true }), makeTreatment('jar'), makeTreatment('tin')] },
  );
  const [jar, tin] = first(trial).comparisons;
  expect(jar?.dispersion).toEqual(tin?.dispersion); // one φ* for all groups of the lot
  expect(jar?.dispersion?.df).toBe(6);
  expectClose(jar?.test?.pAdjusted, 2 * (jar?.test?.p ?? 0));
  expect(tin?.test?.pAdjusted).toBe(tin?.test?.p);
});

test('incomplete blocks and two blocks fall back to groups', () => {
  const trial = germinationTrial({ packet: [[40, 50], [42, 50], [41, 50]], jar: [[45, 50], [48, 50], [47, 50]] }); // prettier-ignore
  const inBlocks = (blocks: readonly string[]) =>
    only({ ...trial, sowings: trial.sowings.map((sowing, index) => ({ ...sowing, block: blocks[index] ?? null })) });
  expect(inBlocks(['1', '2', '3', '1', '2', '3']).interval?.method).toBe('newcombe-blocks');
  expect(inBlocks(['1', '2', '3', '1', '2', '2']).interval?.method).toBe('newcombe-effective');
  expect(inBlocks(['1', '2', '2', '1', '2', '2']).interval?.method).toBe('newcombe-effective');
  expect(inBlocks(['1', '2', '3', '1', '2']).interval?.method).toBe('newcombe-effective');
});

test('lots of different crops are pooled only where the outcome says so', () => {
  const of = (crop: string, pool: boolean) => {
    const leek = germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] }); // prettier-ignore
    const other = germinationTrial({ packet: [[30, 50], [32, 50]], jar: [[45, 50], [41, 50]] }, {}, { lot: 'other' }); // prettier-ignore
    return first({
      ...leek,
      lots: [makeLot('leek'), makeLot('other', crop)],
      outcomes: [makeOutcome({ pool })],
      sowings: [...leek.sowings, ...other.sowings],
      counts: [...leek.counts, ...other.counts],
    }).comparisons.at(-1);
  };
  expect(of('leek', false)).toMatchObject({ lot: 'all', lots: ['leek', 'other'], units: { treatment: 4, control: 4 } });
  expect(of('cress', true)?.lot).toBe('all');
  expect(of('cress', false)?.lot).toBe('other');
});

test('a pooled comparison takes only lots in which both treatments are replicated', () => {
  const counts = { packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] } as const; // prettier-ignore
  const single = { packet: counts.packet, jar: counts.jar.slice(0, 1) };
  const parts = [counts, single, counts].map((lot, index) => germinationTrial(lot, {}, { lot: `lot${index}` }));
  const result = first(
    makeTrial({
      lots: parts.map((_, index) => makeLot(`lot${index}`)),
      sowings: parts.flatMap(({ sowings }) => sowings),
      counts: parts.flatMap((part) => part.counts),
    }),
  );
  const pooled = result.comparisons.find(({ lot }) => lot === 'all');
  expect(pooled?.lots).toEqual(['lot0', 'lot2']);
  expect(pooled?.test?.pAdjusted).toBe(pooled?.test?.p);
});

test('in a storage series each test is compared by itself, with one dispersion for the lot', () => {
  const sowings = [0, 1, 2].flatMap((stored) =>
    ['packet', 'jar'].flatMap((id) => [1, 2].map((n) => makeSowing(`${id}${n}-${stored}`, id, { stored }))),
  );
  const counts = sowings.map(({ id }, index) => makeCount(id, 14, 45 - index));
  const result = first(makeTrial({ sowings, counts }));
  expect(result.comparisons.map(({ stored, dispersion }) => [stored, dispersion?.df])).toEqual([
    [0, 6],
    [1, 6],
    [2, 6],
  ]);
});
