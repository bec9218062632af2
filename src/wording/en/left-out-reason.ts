import type { LeftOutReason } from '../../analysis/analysis.ts';

/** Why a sowing did not enter an outcome. */
export const leftOutReason = (reason: LeftOutReason): string => REASONS[reason];

const REASONS: Readonly<Record<LeftOutReason, string>> = {
  deviation: 'a mishap',
  'not-checked': 'not checked on the day',
  'nothing-germinated': 'nothing came up, so there is no time',
  'not-measured': 'not measured on the day',
  'no-seed-number': 'number of seeds not known',
};
