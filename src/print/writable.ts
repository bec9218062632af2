import { create, type Font } from 'fontkitten';
import { faces } from './faces.ts';

/** Families in the order in which a character is looked for. */
const drawnBy = new Map<number, string | null>();
let known: readonly { readonly family: string; readonly font: Font }[] | undefined;

/** The first family that has a character; null where none of ours has. */
export function familyOf(character: string): string | null {
  const code = character.codePointAt(0) ?? 0;
  const found = drawnBy.get(code);
  if (found !== undefined) return found;
  known ??= faces().map(({ family, bytes }) => ({ family, font: create(bytes) as Font }));
  const family = known.find(({ font }) => font.hasGlyphForCodePoint(code))?.family ?? null;
  drawnBy.set(code, family);
  return family;
}

/** Said to join or vary the characters beside them: nothing to see, and nothing without those. */
const UNSEEN = /[\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFE0E\uFE0F]/u;
const SPACE = /\s/u;

/**
 * A text that our faces can draw: a character that none of them has is written as its number, `[U+1F331]`, so
 * that nothing is lost and the PDF stays readable aloud. Joiners and variants go with the picture that they joined.
 */
export function writable(text: string): string {
  let last = true;
  return Array.from(text.normalize('NFC'), (character) => {
    if (UNSEEN.test(character)) return last ? character : '';
    last = SPACE.test(character) || familyOf(character) !== null;
    return last ? character : `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;
  }).join('');
}
