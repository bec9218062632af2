import { create, type Font } from 'fontkitten';
import { faces } from './faces.ts';

/** A figure among figures of one width; none of the face's own is as wide. */
const FIGURE = 0.7;

let font: Font | undefined;
const widths = new Map<string, number | null>();

/**
 * Width of a text as the template sets small print (without kerning), in its size: never less than it takes.
 *
 * @returns null where the face of small print lacks a character
 */
export function smallWidth(text: string): number | null {
  let sum = 0;
  for (const character of text) {
    const width = widths.get(character) ?? widthOf(character);
    if (width === null) return null;
    sum += width;
  }
  return sum;
}

function widthOf(character: string): number | null {
  font ??= create(faces().find(({ family }) => family === 'Atkinson Hyperlegible Next')?.bytes as Buffer) as Font;
  const code = character.codePointAt(0) ?? 0;
  const own = font.hasGlyphForCodePoint(code) ? font.glyphForCodePoint(code).advanceWidth / font.unitsPerEm : null;
  const width = /\d/.test(character) ? FIGURE : own;
  widths.set(character, width);
  return width;
}
