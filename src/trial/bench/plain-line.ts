/** What was typed as one line without invisible signs, as the readers of the files will take it. */
export function plainLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cs}\uFFFD]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
