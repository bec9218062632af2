/** Widths of one character in sixteenths of the font size, rounded up, by what the character looks like. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/^\p{M}|^\u200D/u, 0],
  [/^[ !'(),.:;`ijl|]/, 6],
  [/^["\-[\]_frt{}/\\I]/, 7],
  [/^[mwMW%@…&]/, 15],
  [/^[\d\p{Ll}\p{P}]/u, 10],
  [/^\p{Lu}/u, 12],
  [/^[\u0590-\u08FF]/u, 11],
];
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Characters as a reader counts them: letters with their accents, emoji with their parts. */
export const characters = (text: string): string[] => Array.from(graphemes.segment(text), ({ segment }) => segment);

/**
 * Width of a text, in the unit of `size`. An estimate on the safe side of the charts' typeface (its widths were measured in
 * Chromium, semi-bold included) and of the usual sans-serif faces: charts are drawn without a browser, so nothing is measured,
 * and the same text takes the same room everywhere. What is not known counts as a full square.
 */
export function textWidth(text: string, size: number): number {
  const sixteenths = characters(text).reduce(
    (sum, character) => sum + (WIDTHS.find(([pattern]) => pattern.test(character))?.[1] ?? 16),
    0,
  );
  return (sixteenths / 16) * size;
}
