import type { VerdictShape } from '../../wording/words.ts';

const HEIGHTS: Readonly<Record<VerdictShape, number>> = { above: 6, below: 18, level: 12, open: 12, question: 12 };

/**
 * Every finding as a shape, by name: a seed above, below or on the line of the control; hollow where the question
 * stays open, a dashed line with a question mark where it cannot be answered. Black on white, to survive a copier.
 */
export function verdictMarks(): Readonly<Record<string, string>> {
  return Object.fromEntries((Object.keys(HEIGHTS) as VerdictShape[]).map((shape) => [shape, markOf(shape)]));
}

function markOf(shape: VerdictShape): string {
  const line = `<path d="M2 12H34"${shape === 'question' ? ' stroke-dasharray="2 3"' : ''}/>`;
  const limits = { level: '<path d="M10 4H26M10 20H26"/>', open: '<path d="M6 7v10M30 7v10"/>' };
  const seed = `<ellipse cx="18" cy="${HEIGHTS[shape]}" rx="6" ry="4.5"${shape === 'open' ? ' fill="#fff"' : ''}/>`;
  const asked =
    '<rect x="11" y="3" width="14" height="18" fill="#fff" stroke="none"/>' +
    '<path fill="none" stroke-width="2" d="M14 8.5a4 4 0 1 1 5.6 3.7c-1.1.5-1.6 1.2-1.6 2.3v.7M18 18v1.6"/>';
  const inner = `${line}${shape === 'level' || shape === 'open' ? limits[shape] : ''}${shape === 'question' ? asked : seed}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 36 24" width="36" height="24" fill="#1d2427" stroke="#1d2427" stroke-width="1.5">${inner}</svg>`;
}
