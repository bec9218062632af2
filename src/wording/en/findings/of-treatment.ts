import type { Saying } from './saying.ts';

/** "Sealed jar: 4 more per 100"; "the two were level" where they were. */
export const ofTreatment = ({ facts, estimate, name }: Saying): string =>
  facts.estimate?.sign === 0 ? 'the two were level' : `${name}: ${estimate}`;
