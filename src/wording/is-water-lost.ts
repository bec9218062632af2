import type { Result } from '../analysis/analysis.ts';

/**
 * Whether an outcome of moisture compares water lost, because the moisture of some seed is not known:
 * there, more means drier.
 */
export const isWaterLost = ({ unit }: Pick<Result, 'unit'>): boolean => unit === '% of mass lost';
