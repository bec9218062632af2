import type { Refusal } from '../refusal.ts';

/** Control characters, halves of a character, and what XML can hold under no name. */
const CONTROL = '[^\\P{Cc}\\t\\n\\r]|[\\p{Cs}\\uFFFE\\uFFFF]';
/** Signs that turn the direction of whatever follows them: 12 would be read as 21. Letters know their own direction. */
const TURN = '[\\u202A-\\u202E\\u2066-\\u2069]';
const SIGN = new RegExp(`${CONTROL}|(${TURN})`, 'u');

/** The first sign of a text that nobody can see and that could mislead a reader, a terminal or a file of another kind; null where there is none. */
export function invisibleSign(text: string): { readonly at: number; readonly refusal: Refusal } | null {
  const found = SIGN.exec(text);
  if (found === null) return null;
  const code = `U+${found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
  if (found[1] !== undefined) {
    const refusal = {
      rule: 'turning-sign',
      message: `an invisible sign that turns the direction of reading (${code}) stands here`,
      remedy: 'Delete it, or type the words anew: it often comes along when text is copied from another program.',
    };
    return { at: found.index, refusal };
  }
  const refusal = {
    rule: 'control-character',
    message: `an invisible control character (${code}) stands here`,
    remedy: 'Delete it, or save the file again as UTF-8: the letters may have been broken on the way.',
  };
  return { at: found.index, refusal };
}
