import type { Analysis, Comparison, Group, Interval, Result, UnitValue, Verdict } from '../../src/analysis/analysis.ts';
import type { Trial } from '../../src/trial/trial.ts';
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
          seeds: total('seeds'),
          count: total('count'),
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
