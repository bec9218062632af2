import type { MethodText } from './words.ts';

/**
 * A method as the methods page tells it, in one language; the first of `plain` is what a report repeats.
 * Its sources are METHOD_SOURCES.
 */
export type MethodEntry = Omit<MethodText, 'id' | 'sources'>;
