import { rounded } from './rounded.ts';

/**
 * A number made ready to be said: rounded, with its direction apart, and never rounded across a line
 * that a verdict stands on.
 */
export interface Amount {
  readonly sign: -1 | 0 | 1;
  /** Absolute size, rounded to `digits`; for `just-over` and `just-under` the margin itself; for `less-than` one step. */
  readonly size: number;
  readonly digits: number;
  readonly near: 'exact' | 'just-over' | 'just-under' | 'less-than';
}

/**
 * Rounds a difference for a sentence. Where rounding would put it on the other side of zero or of the
 * smallest difference that matters, or right on that line, the line is named instead: "less than 1",
 * "just over 10", "just under 10". So a printed interval never takes in, or leaves out, a value that
 * the interval itself does not.
 *
 * @param value  the difference, in the outcome's unit
 * @param digits digits after the point that the sentence may show
 * @param margin smallest difference that matters, above 0; null where none was given
 */
export function amount(value: number, digits: number, margin: number | null = null): Amount {
  const size = Math.abs(value);
  const sign = Math.sign(value) as -1 | 0 | 1;
  if (size === 0 || size === margin) return { sign, size, digits, near: 'exact' };

  const step = 10 ** -digits;
  const shown = rounded(size, digits);
  if (margin !== null && crosses(size, shown, margin)) {
    return { sign, size: margin, digits, near: size > margin ? 'just-over' : 'just-under' };
  }
  if (shown === 0) {
    if (margin !== null && margin < step) return { sign, size: margin, digits, near: 'just-under' };
    return { sign, size: step, digits, near: 'less-than' };
  }
  return { sign, size: shown, digits, near: 'exact' };
}

const crosses = (size: number, shown: number, line: number) => Math.sign(size - line) !== Math.sign(shown - line);
