/** Letters after which a long word may be cut. */
const EVERY = 10;

/**
 * A text whose words all fit a column: those of 25 letters or more may be cut after every tenth, without a hyphen
 * (U+200B). An address stays whole, to be copied from the PDF.
 */
export function breakable(text: string): string {
  return text.replace(/[^\s\u200B]{25,}/gu, (word) =>
    /^https?:/.test(word)
      ? word
      : Array.from(word, (letter, at) => (at > 0 && at % EVERY === 0 ? `\u200B${letter}` : letter)).join(''),
  );
}
