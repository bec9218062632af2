import type { Measure } from '../trial/trial.ts';

/** A detectable difference rounded up, so that it promises no more than was computed: whole points, else tenths. */
export const detectableSize = (detectable: number, measure: Measure): number =>
  measure === 'germination' ? Math.ceil(detectable) : Math.ceil(detectable * 10) / 10;
