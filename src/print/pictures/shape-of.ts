/** Height of a drawing for each unit of its width, by the size that its SVG names first. */
export function shapeOf(svg: string): number {
  const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(svg) ?? [];
  return Number(height) / Number(width) || 1;
}
