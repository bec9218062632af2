/** Characters by their width in sixteenths of the font size, rounded up: the wider of the charts' own face and Arial. */
const WIDTHS: Readonly<Record<number, string>> = {
  4: "'ij",
  5: ' \u00A0!,.:;fl|\u2009\u202F',
  6: '"()-[]`rt{}‘’“”',
  7: '/I\\',
  8: '*ckstvxyz',
  9: '127?JL^_adeghnou–',
  10: '345689$+<>FTZbpq~−°·',
  11: '0#=ABEKPSVXY',
  12: '&CDHNRUw',
  13: 'GOQ',
  14: 'mM',
  15: '%',
};
const KNOWN = new Map(Object.entries(WIDTHS).flatMap(([width, all]) => [...all].map((one) => [one, Number(width)])));
/** Other scripts, by their widest ordinary letters; what is not listed takes a full square. */
const OTHERS: readonly (readonly [RegExp, number])[] = [
  [/^[\p{Script=Latin}\p{Script=Greek}]/u, 13],
  [/^[\p{Script=Hebrew}\p{Script=Arabic}]/u, 12],
];
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Characters as a reader counts them: letters with their accents, emoji with their parts. Plain ones need no rules. */
export const characters = (text: string): string[] =>
  /^[ -~]*$/.test(text) ? text.split('') : Array.from(graphemes.segment(text), ({ segment }) => segment);

/**
 * Width of a text, in the unit of `size`. An estimate on the safe side (tested against a browser's measure in the gallery):
 * charts are drawn without a browser, so nothing is measured, and the same text takes the same room everywhere.
 */
export function textWidth(text: string, size: number): number {
  return (characters(text).reduce((sum, character) => sum + sixteenths(character), 0) / 16) * size;
}

function sixteenths(character: string): number {
  const known = KNOWN.get(character);
  if (known !== undefined) return known;
  const base = String.fromCodePoint(character.normalize('NFD').codePointAt(0) ?? 0);
  return KNOWN.get(base) ?? OTHERS.find(([pattern]) => pattern.test(base))?.[1] ?? 17;
}
