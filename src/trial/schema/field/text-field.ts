import * as z from 'zod';

export const LONGEST_TEXT = 10_000;

/** Free text, blanks at its ends taken off. */
export function textField() {
  return z.string().trim().min(1).max(LONGEST_TEXT);
}
