import type { Comparison } from './analysis.ts';

/** Whether all units of a lot were at 0 or all at 100 %, so that φ* and what follows from it is an assumption (methods 2). */
export const hasUnknownSpread = ({ dispersion }: Comparison): boolean => dispersion !== null && dispersion.phi === null;
