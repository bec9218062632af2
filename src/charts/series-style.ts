import { INK, PAPER } from './chart-theme.ts';

export interface TreatmentStyle {
  readonly colour: string;
  readonly fill: string;
  /** Vega's `strokeDash`; [1, 0] is a whole line. */
  readonly dash: readonly number[];
  readonly shape: string;
}

/**
 * Each at least 3:1 against light and dark paper and their shades, and told apart by readers without one
 * kind of cone (distances and contrasts are tested).
 */
const COLOURS = ['#2372b5', '#d0660f', '#12979a', '#846756', '#8c77ed'] as const;
const DASHES = [
  [7, 3],
  [2, 2.5],
  [10, 3, 2, 3],
  [14, 4],
  [5, 2, 1.5, 2, 1.5, 2],
] as const;
const SHAPES = ['square', 'triangle-up', 'diamond', 'cross', 'triangle-down'] as const;

/** Ink, a whole line, an open circle. */
export const CONTROL_STYLE: TreatmentStyle = { colour: INK, fill: PAPER, dash: [1, 0], shape: 'circle' };

/**
 * How the series at a place (0, 1, 2 …) beside the control is drawn. The first five have a colour, a dash and a shape of
 * their own; beyond, combinations differ (up to 125 of them).
 */
export function seriesStyle(place: number): TreatmentStyle {
  const round = Math.floor(place / COLOURS.length);
  const pick = <T>(from: readonly T[], step: number): T => from[(place + step) % from.length] as T;
  const colour = pick(COLOURS, 0);
  return {
    colour,
    fill: colour,
    dash: pick(DASHES, round),
    shape: pick(SHAPES, 2 * round + Math.floor(round / DASHES.length)),
  };
}
