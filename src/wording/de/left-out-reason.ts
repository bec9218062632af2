import type { LeftOutReason } from '../../analysis/analysis.ts';

/** Why a sowing did not enter an outcome. */
export const leftOutReason = (reason: LeftOutReason): string => REASONS[reason];

const REASONS: Readonly<Record<LeftOutReason, string>> = {
  deviation: 'ein Missgeschick',
  'not-checked': 'an dem Tag nicht ausgezählt',
  'nothing-germinated': 'nichts ging auf, also gibt es keine Zeit',
  'not-measured': 'an dem Tag nicht gemessen',
  'no-seed-number': 'Zahl der Samen nicht bekannt',
};
