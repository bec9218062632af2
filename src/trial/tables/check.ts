import type { FileProblems, Place } from '../file-problems.ts';
import type { Count } from '../trial.ts';

export const CATEGORIES = ['abnormal', 'hard', 'fresh', 'dead'] as const;
type Categories = Pick<Count, (typeof CATEGORIES)[number]>;

/**
 * One check of one sowing as written, with the places of its cells. `germinated` is a total so far, or
 * the new ones since the last check.
 */
export interface Check extends Count {
  /** The cell was empty, rather than NC. */
  readonly empty: boolean;
  readonly report: FileProblems;
  /** Place of the cell of `germinated` or of a category. */
  place(field: string): Place;
}

/** The categories of a row, null where the table does not have them. */
export function categoriesOf(row: { readonly [Category in keyof Categories]?: number | null | undefined }): Categories {
  const { abnormal = null, hard = null, fresh = null, dead = null } = row;
  return { abnormal, hard, fresh, dead };
}
