import type { Saying } from './saying.ts';

/** "jenseits der Schwelle von 10 je 100, ab der ein Unterschied zählen sollte", or that it was not fixed beforehand. */
export const beyondText = ({ facts, threshold, thresholdSet }: Saying): string =>
  facts.marginFixed
    ? `jenseits der ${thresholdSet}`
    : `jenseits der genannten ${threshold}, die allerdings nicht vor dem Zählen festgelegt wurde`;
