import { characters, textWidth } from './text-width.ts';

/** What no SVG may hold: control characters and halves of surrogate pairs. */
// oxlint-disable-next-line no-control-regex
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF]/g;

/**
 * A text broken into lines that fit a width. Breaks at blanks, inside a word only where the word alone is too wide;
 * what is left after the last line is cut with "…" (the whole text stands in the chart's table and text alternative).
 *
 * @param width the room, in the unit of `size`
 */
export function fitText(text: string, width: number, size: number, mostLines = 3): string[] {
  const fits = (line: string) => textWidth(line, size) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of text.toWellFormed().replace(FORBIDDEN, '\uFFFD').split(/\s+/).filter(Boolean)) {
    if (fits(line === '' ? word : `${line} ${word}`)) {
      line = line === '' ? word : `${line} ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of characters(word)) {
      if (!fits(line + character) && line !== '') {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  if (line !== '') lines.push(line);
  return lines.length <= mostLines
    ? lines
    : [...lines.slice(0, mostLines - 1), shortened(lines[mostLines - 1] ?? '', fits)];
}

function shortened(line: string, fits: (line: string) => boolean): string {
  const kept = characters(line);
  while (kept.length > 0 && !fits(`${kept.join('').trimEnd()}…`)) kept.pop();
  return `${kept.join('').trimEnd()}…`;
}
