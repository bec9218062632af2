import { create, type Font } from 'fontkitten';
import { faces } from './faces.ts';

/** Joiners, variants and directions: nothing to see, and nothing without the characters beside them. */
const UNSEEN = /\p{Default_Ignorable_Code_Point}/u;

let fonts: ReadonlyMap<string, readonly Font[]> | undefined;
const answers = new Map<string, readonly string[]>();

/** The families all of whose faces have a character, in the order in which the template tries them. */
export function familiesWith(character: string): readonly string[] {
  const answer = answers.get(character);
  if (answer) return answer;
  fonts ??= new Map(
    [...Map.groupBy(faces(), ({ family }) => family)].map(([family, all]) => [
      family,
      all.map(({ bytes }) => create(bytes) as Font),
    ]),
  );
  const code = character.codePointAt(0) ?? 0;
  const having = [...fonts].filter(([, all]) => all.every((font) => font.hasGlyphForCodePoint(code)));
  const families = having.map(([family]) => family);
  answers.set(character, families);
  return families;
}

/**
 * A text that our faces can draw: a character that none of them has is written as its number, `[U+1F331]`, so
 * that nothing is lost and the PDF can be read aloud. Joiners and variants go with the picture that they joined.
 */
export function writable(text: string): string {
  if (/^[ -~\n]*$/.test(text)) return text; // as most are; every face has ASCII
  let drawn = true;
  return Array.from(text.normalize('NFC'), (character) => {
    if (UNSEEN.test(character)) return drawn ? character : '';
    drawn = /\s/.test(character) || familiesWith(character).length > 0;
    return drawn ? character : numberOf(character);
  }).join('');
}

/** 🌱 as `[U+1F331]`. */
export const numberOf = (character: string): string =>
  `[U+${character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0')}]`;
