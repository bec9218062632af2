import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** A storage series that gives no half-life of a treatment, and why. */
export const noHalfLife: Rule = (_, results) =>
  results.flatMap(({ outcome, storage = [] }) =>
    storage.flatMap(({ lot, treatment, reason, tests }) =>
      reason === null ? [] : [makeCaveat('no-half-life', { outcome, lot, treatment }, { reason, tests })],
    ),
  );
