import type { Trial } from '../../trial/trial.ts';
import { seasonOf } from './season-of.ts';

/** So many trials fill 130 pages: no booklet should be thicker, and setting one takes memory by its pages. */
const MOST = 250;

export interface Booklet<Entry> {
  /** Of its file: `2026`, and of a season that takes several `2026-2` for the second. */
  readonly name: string;
  readonly year: string;
  /** From 1 on. */
  readonly part: number;
  readonly parts: number;
  readonly entries: readonly Entry[];
}

/** The booklets in which the trials of each season stand, in the order of their titles; the newest season first. */
export function bookletsOf<Entry extends { readonly trial: Trial }>(entries: readonly Entry[]): Booklet<Entry>[] {
  const seasons = [...Map.groupBy(entries, ({ trial }) => seasonOf(trial))];
  return seasons
    .toSorted(([a], [b]) => Number(b) - Number(a))
    .flatMap(([year, all]) => {
      if (year === null) return [];
      const sorted = all.toSorted(byTitle);
      const parts = Math.ceil(all.length / MOST);
      return Array.from({ length: parts }, (_, index) => ({
        name: index === 0 ? year : `${year}-${index + 1}`,
        year,
        part: index + 1,
        parts,
        entries: sorted.slice(Math.round((index * all.length) / parts), Math.round(((index + 1) * all.length) / parts)),
      }));
    });
}

/** Titles in the order of their letters; trials of the same title in that of their ids. */
export function byTitle({ trial: a }: { readonly trial: Trial }, { trial: b }: { readonly trial: Trial }): number {
  const [one, other] = a.title === b.title ? [a.id, b.id] : [a.title, b.title];
  return one < other ? -1 : one > other ? 1 : 0;
}
