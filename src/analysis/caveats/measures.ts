import type { Result } from '../analysis.ts';

type Measured = Pick<Result, 'measure'>;

/** Outcomes of how many came up by a day. */
export const isGermination = ({ measure }: Measured): boolean => measure === 'germination';

/** Outcomes of how fast seeds came up. */
export const isSpeed = ({ measure }: Measured): boolean => ['t50', 'mgt', 'maguire', 'spread'].includes(measure);

/** Outcomes read from counts.csv, storage series apart. */
export const isAboutCounts = (result: Measured): boolean => isGermination(result) || isSpeed(result);

export const hasComparisons = (results: readonly Result[]): boolean =>
  results.some(({ comparisons }) => comparisons.length > 0);
