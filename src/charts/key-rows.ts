import { LEADING, TEXT } from './chart-theme.ts';
import { fitText } from './fit-text.ts';

/** Where a key starts and how wide it is, in units of the drawing. */
export interface KeyBox {
  readonly x: number;
  readonly width: number;
}

const SAMPLE = 48; // length of a line in the key
const GAP = 10;
const BETWEEN = 6;

/** A row for each series, from y = 0 down: where its sample line, its mark and its label of one or two lines stand. */
export function keyRows<Style extends object>(
  series: readonly { readonly label: string; readonly style: Style }[],
  { x, width }: KeyBox,
) {
  let height = 3;
  const rows = series.map(({ label, style }) => {
    const text = fitText(label, width - SAMPLE - GAP, TEXT, 2);
    const y = height + LEADING / 2;
    height += text.length * LEADING + BETWEEN;
    return { ...style, y, text, x, x2: x + SAMPLE, middle: x + SAMPLE / 2, words: x + SAMPLE + GAP };
  });
  return { rows, height };
}
