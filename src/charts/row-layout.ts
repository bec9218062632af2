import { LEADING, SMALL, TEXT, WIDTH } from './chart-theme.ts';
import { fitText } from './fit-text.ts';

/** Room for the words of a row and for its picture beside them. */
export const LABEL_WIDTH = 150;
export const LABEL_GAP = 12;
export const RIGHT = 14;
export const PLOT_WIDTH = WIDTH - LABEL_WIDTH - LABEL_GAP - RIGHT;

export interface RowText {
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
  readonly weight: number;
  readonly size: number;
}

const GAP = 14;

/**
 * Rows under one another, each as high as its words or its picture need, words in the left column. Charts with rows have
 * room for long labels at the width of a phone.
 */
export function rowLayout(texts: readonly RowText[]): { rows: Row[]; lines: RowLine[]; height: number } {
  const rows: Row[] = [];
  const lines: RowLine[] = [];
  let top = 0;
  for (const { label, notes, picture } of texts) {
    const words = [
      ...fitText(label, LABEL_WIDTH, TEXT).map((text) => ({ text, weight: 600, size: TEXT })),
      ...notes.flatMap((note) => fitText(note, LABEL_WIDTH, SMALL).map((text) => ({ text, weight: 400, size: SMALL }))),
    ];
    const bottom = top + Math.max(words.length * LEADING, picture) + GAP;
    const middle = (top + bottom) / 2;
    rows.push({ top, bottom, middle });
    const first = middle - (words.length * LEADING) / 2 + TEXT - 1;
    words.forEach((word, index) => lines.push({ ...word, x: -LABEL_WIDTH - LABEL_GAP, y: first + index * LEADING }));
    top = bottom;
  }
  return { rows, lines, height: top };
}
