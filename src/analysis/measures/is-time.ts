import type { Measure } from '../../trial/trial.ts';

/** Measures that are times, which checks bracket: only seeds that germinated have one. */
export function isTime(measure: Measure): boolean {
  return measure === 't50' || measure === 'mgt' || measure === 'spread';
}
