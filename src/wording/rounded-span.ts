import type { Span } from './moisture-facts.ts';

/** A span in tenths: each end to the nearest, or outward so that nothing allowed is left out. */
export const roundedSpan = ({ lower, upper }: Span, how: 'nearest' | 'outward'): Span =>
  how === 'nearest'
    ? { lower: tenths(lower, Math.round), upper: tenths(upper, Math.round) }
    : { lower: tenths(lower, Math.floor), upper: tenths(upper, Math.ceil) };

const tenths = (value: number, round: (value: number) => number) => round(Number((value * 10).toFixed(6))) / 10;
