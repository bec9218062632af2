import { LABEL_GAP, LABEL_WIDTH, PLOT_WIDTH, RIGHT } from './row-layout.ts';

/**
 * Size of a plot whose rows have their words on the left, and the room around it.
 *
 * @param height of all rows
 * @param bottom room of the axis and its title
 * @param top    room above the first row
 */
export const plotFrame = (height: number, bottom: number, top = 4) => ({
  width: PLOT_WIDTH,
  height,
  padding: { left: LABEL_WIDTH + LABEL_GAP, top, right: RIGHT, bottom },
});
