import type { Place } from '../../trial/file-problems.ts';

/** Line and column of an offset in a text. */
export function placeIn(source: string, offset: number): Place {
  const before = source.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: before.length, column: (before.at(-1) ?? '').length + 1, cell: null, field: null };
}
