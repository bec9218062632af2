import { LEADING, SMALL, TEXT, WIDTH } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';

/** Room for the words of a row and for its picture beside them. */
export const LABEL_WIDTH = 154;
export const LABEL_GAP = 12;
export const RIGHT = 14;
export const PLOT_WIDTH = WIDTH - LABEL_WIDTH - LABEL_GAP - RIGHT;

export interface RowText {
  /** Stands above the row, for this and the rows that follow; a hairline parts it from the rows before. */
  readonly heading?: string | null | undefined;
  readonly label: string;
  /** What the row says in words: the value, its range. */
  readonly notes: readonly string[];
  /** Height that the picture of the row needs. */
  readonly picture: number;
}

export interface Row {
  readonly top: number;
  readonly bottom: number;
  readonly middle: number;
}

/** One line of text at the left of a row; x and y in the unit of the drawing. */
export interface RowLine {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** Words and the distance between rows on a phone, and across the column of a sheet. */
export const NARROW = { words: LABEL_WIDTH, between: 16 } as const;
export const WIDE = { words: 380, between: 10 } as const;
export type RowRoom = typeof NARROW | typeof WIDE;

const ABOVE = 8; // between a hairline and the heading under it

/**
 * Rows under one another, each as high as its words or its picture need, words in the left column. Charts with rows have
 * room for long labels at the width of a phone.
 */
export function rowLayout(texts: readonly RowText[], room: RowRoom = NARROW) {
  const x = -room.words - LABEL_GAP + 1; // a j reaches out to the left
  const rows: Row[] = [];
  const headings: RowLine[] = [];
  const partings: { readonly x: number; readonly x2: number; readonly y: number }[] = [];
  const labels: RowLine[] = [];
  const notes: RowLine[] = [];
  let top = 0;
  for (const row of texts) {
    const heading = row.heading ? fitText(row.heading, WIDTH - RIGHT, TEXT, 2) : [];
    if (heading.length > 0) {
      if (top > 0) partings.push({ x, x2: PLOT_WIDTH + RIGHT, y: top });
      top += ABOVE;
      headings.push(...heading.map((text, index) => ({ x, y: top + (index + 0.5) * LEADING, text })));
      top += heading.length * LEADING;
    }
    const label = fitText(row.label, room.words, TEXT);
    const below = row.notes.flatMap((note) => fitText(note, room.words, SMALL));
    const words = (label.length + below.length) * LEADING;
    const bottom = top + Math.max(words, row.picture) + room.between;
    const middle = (top + bottom) / 2;
    const first = middle - words / 2 + LEADING / 2;
    rows.push({ top, bottom, middle });
    labels.push(...label.map((text, index) => ({ x, y: first + index * LEADING, text })));
    notes.push(...below.map((text, index) => ({ x, y: first + (label.length + index) * LEADING, text })));
    top = bottom;
  }
  return { rows, words: { headings, partings, labels, notes }, height: top };
}

const encoding = { x: place('x'), y: place('y'), text: raw('text') };

/** Draws the words of a row layout. */
export const ROW_WORDS: Layers = [
  {
    name: 'partings',
    data: { name: 'partings' },
    mark: { type: 'rule', strokeOpacity: 0.3 },
    encoding: { x: place('x'), x2: { field: 'x2' }, y: place('y') },
  },
  {
    name: 'headings',
    data: { name: 'headings' },
    mark: { type: 'text', baseline: 'middle', fontWeight: 600 },
    encoding,
  },
  { name: 'labels', data: { name: 'labels' }, mark: { type: 'text', baseline: 'middle', fontWeight: 600 }, encoding },
  { name: 'notes', data: { name: 'notes' }, mark: { type: 'text', baseline: 'middle', fontSize: SMALL }, encoding },
];
