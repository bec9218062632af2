/** A name as an id that HTML, CSS and an address can hold: "Height (mm)" -> "height-mm". */
export function slug(...parts: readonly (string | number)[]): string {
  return parts
    .join('-')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}
