import type { Refusal } from '../refusal.ts';
import type { Count } from '../trial.ts';

export const CATEGORIES = ['abnormal', 'hard', 'fresh', 'dead'] as const;
type Categories = Pick<Count, (typeof CATEGORIES)[number]>;

/**
 * One check of one sowing as written, with a way to speak about its cells. `germinated` is a total so far, or
 * the new ones since the last check.
 */
export interface Check extends Count {
  /** The cell was empty, rather than NC. */
  readonly empty: boolean;
  /** Reports something about the cell of `germinated` or of a category, in whatever file it stands. */
  say(level: 'error' | 'warning' | 'notice', field: string, refusal: Refusal): void;
  /** Address of the cell of `germinated`. */
  cell(): string | null;
}

/** The categories of a row, null where the table does not have them. */
export function categoriesOf(row: { readonly [Category in keyof Categories]?: number | null | undefined }): Categories {
  const { abnormal = null, hard = null, fresh = null, dead = null } = row;
  return { abnormal, hard, fresh, dead };
}
