import type { Comparison } from '../../src/analysis/analysis.ts';

/** A comparison of jar with packet in leek; only what pictures and tables need is to be given. */
export function makeComparison({
  estimate,
  lower = null,
  upper = null,
  margin = null,
  parts = {},
}: {
  estimate: number | null;
  lower?: number | null;
  upper?: number | null;
  margin?: number | null;
  parts?: Partial<Comparison>;
}): Comparison {
  return {
    lot: 'leek',
    treatment: 'jar',
    control: 'packet',
    stored: null,
    estimate,
    unit: 'percentage points',
    interval: lower === null || upper === null ? null : { level: 0.95, lower, upper, method: 'newcombe-effective' },
    effects: {},
    dispersion: null,
    test: null,
    permutation: null,
    equivalence:
      margin === null ? null : { margin, fixedBeforehand: true, interval: { level: 0.9, lower, upper }, shown: false },
    tipping: null,
    withLeftOut: null,
    detectable: null,
    verdict: 'unclear',
    ceiling: 'none',
    ceilingFrom: [],
    bracket: null,
    welch: null,
    wouldSettle: null,
    repeatWith: null,
    lotsDiffer: null,
    lots: null,
    halfAdded: false,
    units: { treatment: 4, control: 4, kind: 'sowing' },
    ...parts,
  };
}
