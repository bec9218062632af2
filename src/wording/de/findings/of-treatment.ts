import type { Saying } from './saying.ts';

/** "Dichtes Glas: 4 mehr je 100"; "beide lagen gleichauf" where they did. */
export const ofTreatment = ({ facts, estimate, name }: Saying): string =>
  facts.estimate?.sign === 0 ? 'beide lagen gleichauf' : `${name}: ${estimate}`;
