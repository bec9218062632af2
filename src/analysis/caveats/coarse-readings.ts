import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/** All units of each treatment have one and the same value: read too coarsely to show how much units vary. */
export const coarseReadings: Rule = (trial, results) =>
  pairsOf(
    trial,
    results.filter((result) => !isGermination(result)),
  )
    .filter(({ single }) => !single)
    .flatMap(({ about, result, treated, control }) => {
      const [own, other] = [treated, control].map((side) => [...new Set(side.values.map(({ value }) => value))]);
      const [treatment, controlled] = [own?.[0] ?? null, other?.[0] ?? null];
      if (own?.length !== 1 || other?.length !== 1 || treatment === null || controlled === null) return [];
      const names = { treatment: treated.treatment, control: control.treatment };
      const values = { treatment, control: controlled };
      return [makeCaveat('coarse-readings', about, { ...names, values, unit: result.unit })];
    });
