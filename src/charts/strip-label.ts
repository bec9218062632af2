import { LEADING, SMALL } from './chart-theme.ts';
import { fitText } from './fit-text.ts';
import type { Scale } from './nice-scale.ts';
import { PLOT_WIDTH, type RowLine } from './row-layout.ts';
import { textWidth } from './text-width.ts';

/** What the pale strip around zero means, written above it, kept inside the picture; nothing where there is no strip. */
export function stripLabel(text: string | null, { low, high }: Scale): RowLine[] {
  if (text === null) return [];
  const lines = fitText(text, PLOT_WIDTH, SMALL, 2);
  const half = Math.max(...lines.map((line) => textWidth(line, SMALL))) / 2;
  const x = Math.min(PLOT_WIDTH - half, Math.max(half, ((0 - low) / (high - low)) * PLOT_WIDTH));
  return lines.map((line, index) => ({ x, y: -10 - (lines.length - 1 - index) * LEADING, text: line }));
}
