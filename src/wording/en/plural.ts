/** English plural of a thing of the bench: trays, dishes, boxes, seed batches. */
export function plural(word: string): string {
  if (/(?:s|x|z|ch|sh)$/.test(word)) return `${word}es`;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  if (word.endsWith('shelf')) return word.replace(/f$/, 'ves');
  return `${word}s`;
}
