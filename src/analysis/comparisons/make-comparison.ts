import type { Comparison } from '../analysis.ts';

type Named = Pick<Comparison, 'lot' | 'treatment' | 'control' | 'stored' | 'unit' | 'units'>;

/** A comparison with its keys in the order of the JSON; what is not given is null, and nothing is concluded. */
export function makeComparison(parts: Named & Partial<Comparison>): Comparison {
  return {
    lot: parts.lot,
    treatment: parts.treatment,
    control: parts.control,
    stored: parts.stored,
    estimate: parts.estimate ?? null,
    unit: parts.unit,
    interval: parts.interval ?? null,
    effects: parts.effects ?? {},
    dispersion: parts.dispersion ?? null,
    test: parts.test ?? null,
    permutation: parts.permutation ?? null,
    equivalence: parts.equivalence ?? null,
    tipping: parts.tipping ?? null,
    withLeftOut: parts.withLeftOut ?? null,
    detectable: parts.detectable ?? null,
    verdict: parts.verdict ?? 'untestable',
    ceiling: parts.ceiling ?? 'none',
    ceilingFrom: parts.ceilingFrom ?? [],
    bracket: parts.bracket ?? null,
    welch: parts.welch ?? null,
    wouldSettle: parts.wouldSettle ?? null,
    repeatWith: parts.repeatWith ?? null,
    lotsDiffer: parts.lotsDiffer ?? null,
    lots: parts.lots ?? null,
    halfAdded: parts.halfAdded ?? false,
    units: parts.units,
  };
}
