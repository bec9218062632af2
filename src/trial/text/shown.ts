/** What was found, in quotes and at most 60 characters long, for use inside a sentence. */
export function shown(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const letters = [...line];
  return `"${letters.length > 60 ? `${letters.slice(0, 57).join('')}…` : line}"`;
}
