import type { Analysis, Comparison, Group, Interval, Result, UnitValue, Verdict } from '../../src/analysis/analysis.ts';
import type { Measurement, Trial } from '../../src/trial/trial.ts';
import { makeCount, makeLot, makeSowing, makeTreatment, makeTrial } from '../support/make-trial.ts';

/**
 * Invented trials with invented analyses, for pictures and their tests. The intervals are made up as well (± a fixed
 * number of points): charts draw what they are given.
 */
export interface Invention {
  /** Label and share that comes up in the end, 0 to 1; the first is the control. */
  readonly treatments: readonly (readonly [label: string, share: number])[];
  readonly trays?: number;
  readonly seeds?: number;
  readonly days?: readonly number[];
  readonly blocks?: boolean;
  readonly lots?: readonly string[];
  readonly matters?: number | null;
  readonly halfWidth?: number;
  readonly parts?: Partial<Trial>;
}

/** Numbers between 0 and 1 that are the same at every run. */
export function drawn(seed = 1): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

export function invent(wanted: Invention): { trial: Trial; analysis: Analysis; result: Result } {
  const { trays = 6, seeds = 50, days = [3, 5, 7, 9, 11, 14], blocks = false, lots = ['leek'] } = wanted;
  const draw = drawn();
  const treatments = wanted.treatments.map(([label], index) =>
    makeTreatment(`t${index}`, { label, control: index === 0 }),
  );
  const sowings = lots.flatMap((lot) =>
    treatments.flatMap(({ id }) =>
      Array.from({ length: trays }, (_, index) =>
        makeSowing(`${lot}-${id}-${index + 1}`, id, { lot, seeds, block: blocks ? `shelf ${index + 1}` : null }),
      ),
    ),
  );
  const counts = sowings.flatMap(({ id, treatment }) => {
    const index = Number(treatment?.slice(1));
    const share = wanted.treatments[index]?.[1] ?? 0;
    const luck = share === 0 || share === 1 ? 0 : (draw() - 0.5) * 0.16;
    const final = Math.round(seeds * Math.min(1, Math.max(0, share + luck)));
    const middle = 5.4 + 0.45 * index + (draw() - 0.5);
    return days.map((day) => makeCount(id, day, Math.round(final / (1 + Math.exp(-(day - middle) * 1.3)))));
  });
  const trial = makeTrial({ lots: lots.map((lot) => makeLot(lot)), treatments, sowings, counts, ...wanted.parts });
  const result = germinationResult(trial, days.at(-1) ?? 14, wanted.matters ?? null, wanted.halfWidth ?? 8);
  return { trial, result, analysis: analysisOf(trial, [result]) };
}

export const analysisOf = (trial: Trial, results: readonly Result[]): Analysis => ({
  format: 'fairsown-analysis/1',
  trial: trial.id,
  inputs: [],
  results,
  moisture: [],
  caveats: [],
  plan: { fixed: null, changes: [] },
  software: { name: 'fairsown', version: '0.0.0' },
});

function germinationResult(trial: Trial, day: number, matters: number | null, halfWidth: number): Result {
  const values = trial.sowings.map((sowing): UnitValue => {
    const count = trial.counts.find((found) => found.sowing === sowing.id && found.day === day)?.germinated ?? null;
    return {
      lot: sowing.lot,
      treatment: sowing.treatment ?? '',
      stored: sowing.stored,
      block: sowing.block,
      unit: sowing.id,
      sowings: [sowing.id],
      seeds: sowing.seeds,
      count,
      value: count === null || !sowing.seeds ? null : (100 * count) / sowing.seeds,
      plants: null,
    };
  });
  const spread = (estimate: number, wide: number): Interval => ({
    level: 0.95,
    lower: Math.max(0, estimate - wide),
    upper: Math.min(100, estimate + wide),
    method: 'wilson-effective',
  });
  return resultOf(
    trial,
    { outcome: 'germination', measure: 'germination', unit: '%', day, matters },
    values,
    halfWidth,
    spread,
  );
}

/** A result around unit values: means of units as estimates, made-up intervals. */
export function resultOf(
  trial: Trial,
  about: Pick<Result, 'outcome' | 'measure' | 'unit' | 'day' | 'matters'> & { readonly column?: string },
  values: readonly UnitValue[],
  halfWidth: number,
  intervalOf = (estimate: number, wide: number): Interval => ({
    level: 0.95,
    lower: estimate - wide,
    upper: estimate + wide,
    method: 'welch',
  }),
): Result {
  const groups = trial.lots.flatMap(({ id: lot }) =>
    trial.treatments.flatMap(({ id: treatment }): Group[] => {
      const units = values.filter((unit) => unit.lot === lot && unit.treatment === treatment && unit.value !== null);
      if (units.length === 0) return [];
      const estimate = units.reduce((sum, { value }) => sum + (value ?? 0), 0) / units.length;
      const total = (of: 'seeds' | 'count' | 'plants') => units.reduce((sum, unit) => sum + (unit[of] ?? 0), 0);
      return [
        {
          lot,
          treatment,
          stored: null,
          unit: 'sowing',
          units: units.length,
          sowings: units.length,
          seeds: about.measure === 'germination' ? total('seeds') : null,
          count: about.measure === 'germination' ? total('count') : null,
          estimate,
          sd: null,
          interval: intervalOf(estimate, halfWidth),
          bracket: null,
          plants: total('plants'),
          icc: null,
          plantSd: null,
        },
      ];
    }),
  );
  const control = trial.treatments.find((treatment) => treatment.control)?.id ?? '';
  const comparisons = groups
    .filter(({ treatment }) => treatment !== control)
    .map((group) => {
      const base = groups.find((other) => other.lot === group.lot && other.treatment === control);
      const estimate = (group.estimate ?? 0) - (base?.estimate ?? 0);
      return comparisonOf(group, control, estimate, halfWidth * 1.3, about);
    });
  const days = Object.fromEntries(trial.lots.map(({ id }) => [id, about.day ?? 14]));
  return {
    outcome: about.outcome,
    measure: about.measure,
    primary: true,
    day: about.day,
    unit: about.unit,
    groups,
    comparisons,
    days,
    column: about.column ?? null,
    matters: about.matters,
    values,
    leftOut: [],
    overall: [],
  };
}

export function comparisonOf(
  { lot, treatment, units }: Pick<Group, 'lot' | 'treatment' | 'units'>,
  control: string,
  estimate: number,
  wide: number,
  { matters, unit }: Pick<Result, 'matters' | 'unit'>,
): Comparison {
  const clear = Math.abs(estimate) > wide;
  const verdict: Verdict = units < 2 ? 'untestable' : clear ? 'different' : 'unclear';
  return {
    lot,
    treatment,
    control,
    stored: null,
    estimate,
    unit: unit === '%' ? 'percentage points' : unit,
    interval: {
      level: 0.95,
      lower: estimate - wide,
      upper: estimate + wide,
      method: units < 2 ? 'newcombe-seeds-only' : 'newcombe-effective',
    },
    effects: {},
    dispersion: null,
    test: null,
    permutation: null,
    equivalence: matters
      ? {
          margin: matters,
          fixedBeforehand: true,
          interval: { level: 0.9, lower: estimate - wide * 0.8, upper: estimate + wide * 0.8 },
          shown: false,
        }
      : null,
    tipping: null,
    withLeftOut: null,
    detectable: null,
    verdict,
    ceiling: 'none',
    ceilingFrom: [],
    bracket: null,
    welch: null,
    wouldSettle: null,
    repeatWith: null,
    lotsDiffer: null,
    lots: null,
    halfAdded: false,
    units: { treatment: units, control: units, kind: 'sowing' },
  };
}

/** Heights of invented seedlings, 12 a tray, on day 21; the last tray has none of the plants told apart. */
export function inventHeights(treatments: readonly (readonly [label: string, mean: number])[], trays = 5, plants = 12) {
  const { trial } = invent({ treatments: treatments.map(([label]) => [label, 0.8]), trays });
  const draw = drawn(7);
  const bell = () => draw() + draw() + draw() - 1.5;
  const measurements = trial.sowings.flatMap(({ id, treatment }): Measurement[] => {
    const mean = (treatments[Number(treatment?.slice(1))]?.[1] ?? 40) + bell() * 4;
    return Array.from({ length: plants }, (_, plant) => ({
      sowing: id,
      day: 21,
      plant: String(plant + 1),
      values: { height: Math.round(mean + bell() * 9) },
      line: 2,
    }));
  });
  const grown = { ...trial, measurements, traits: [{ column: 'height', unit: 'mm' }] };
  const values = trial.sowings.map((sowing): UnitValue => {
    const all = measurements.filter((row) => row.sowing === sowing.id).map((row) => row.values['height'] ?? 0);
    const value = all.reduce((sum, height) => sum + height, 0) / all.length;
    return {
      lot: sowing.lot,
      treatment: sowing.treatment ?? '',
      stored: null,
      block: null,
      unit: sowing.id,
      sowings: [sowing.id],
      seeds: null,
      count: null,
      value,
      plants: all.length,
    };
  });
  const about = { outcome: 'height', measure: 'trait', unit: 'mm', day: 21, matters: 8, column: 'height' } as const;
  const result = resultOf(grown, about, values, 4);
  return { trial: grown, result, analysis: analysisOf(grown, [result]) };
}

/** Seed weighed before and after drying (jar, three batches, steps of 0.1 g) and soaking (two batches, no step known). */
export function inventWeighings() {
  const { trial, result } = invent({
    treatments: [
      ['Packet', 0.7],
      ['Dried in a jar', 0.8],
      ['Soaked overnight', 0.8],
    ],
  });
  const weighed = [
    ['t1', 'a', 20, 19.2, 0.1],
    ['t1', 'b', 20.3, 19.4, 0.1],
    ['t1', 'c', 19.8, 19.1, 0.1],
    ['t2', 'd', 5, 6.4, null],
    ['t2', 'e', 5.2, 6.9, null],
  ] as const;
  const weighings = weighed.flatMap(([treatment, batch, before, after, scaleStep]) =>
    (['before', 'after'] as const).map((stage) => ({
      lot: 'leek',
      treatment,
      stage,
      mass: stage === 'before' ? before : after,
      container: null,
      repeat: null,
      scaleStep,
      batch,
      date: null,
      line: 2,
    })),
  );
  const moisture = weighed.map(([treatment, batch, before, after, step]) => {
    const waterLost = (100 * (before - after)) / before;
    return {
      lot: 'leek',
      treatment,
      waterLost,
      moistureBefore: null,
      moistureAfter: null,
      waterLostRange: step === null ? null : { lower: waterLost - 0.5, upper: waterLost + 0.5 },
      moistureAfterRange: null,
      batch,
      repeat: null,
    };
  });
  const heavier = { ...trial, weighings };
  return { trial: heavier, analysis: { ...analysisOf(heavier, [result]), moisture } };
}
