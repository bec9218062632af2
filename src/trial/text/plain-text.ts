/**
 * Text with the look of a spreadsheet taken off: full-width signs to ordinary ones, the typographic
 * minus to a hyphen, special blanks to ordinary ones, none at the ends. For ids, numbers and dates.
 */
export function plainText(text: string): string {
  if (/^[!-~]*$/.test(text)) return text; // as most cells are
  return text
    .replace(/[\uFF01-\uFF5E]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0))
    .replace(/\u2212/g, '-')
    .replace(/[\u200B\u2060\uFEFF]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}
