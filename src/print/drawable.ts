import { familyOf, writable } from './writable.ts';

/** The face that charts name. */
const FACE = 'Atkinson Hyperlegible Next';

/**
 * A chart's SVG with every text in faces of ours: what the chart's own face lacks is marked with the face that has
 * it, since the drawing would otherwise borrow one from the machine; what none has is written as its number.
 */
export function drawable(svg: string): string {
  return svg
    .replace(/ font-family="[^"]*"/g, ` font-family="${FACE}"`)
    .replace(/>([^<]+)</g, (_, text: string) => `>${inFaces(writable(text))}<`);
}

function inFaces(text: string): string {
  return text
    .replace(/&[#\w]+;|[^&]/gu, (one) => one)
    .replace(/[^\u0000-\u02FF]+/gu, (run) => {
      const family = Array.from(run, familyOf).find((found) => found !== null && found !== FACE);
      return family === undefined ? run : `<tspan font-family="${family}">${run}</tspan>`;
    });
}
