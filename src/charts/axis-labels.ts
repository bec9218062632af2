import { SMALL } from './chart-theme.ts';
import { textWidth } from './text-width.ts';

/**
 * Which ticks of an axis can be labelled without labels touching: the last and the first always, of the others as many
 * as fit, from the right. Every tick is still drawn.
 *
 * @param at   place of a tick, in the unit of the drawing
 * @param text label of a tick
 */
export function axisLabels(
  ticks: readonly number[],
  at: (tick: number) => number,
  text: (tick: number) => string,
): number[] {
  const half = (tick: number) => textWidth(text(tick), SMALL) / 2 + 3;
  const apart = (a: number, b: number) => Math.abs(at(a) - at(b)) >= half(a) + half(b);
  const sorted = [...ticks].sort((a, b) => b - a);
  const kept: number[] = [];
  for (const tick of [...sorted.slice(0, 1), ...sorted.slice(-1), ...sorted.slice(1, -1)]) {
    if (kept.every((other) => other !== tick && apart(other, tick))) kept.push(tick);
  }
  return kept.sort((a, b) => a - b);
}
