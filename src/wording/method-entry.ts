import type { MethodText } from './words.ts';

/** A method as the methods page tells it; the first of `plain` is what a report repeats. */
export type MethodEntry = Omit<MethodText, 'id'>;
