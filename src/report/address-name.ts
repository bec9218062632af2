/** Letters that do not come apart into a plain letter and a mark, and umlauts as German writes them without. */
const PLAIN: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  å: 'a',
  ð: 'd',
  đ: 'd',
  þ: 'th',
  ł: 'l',
  ı: 'i',
};

/**
 * A name as one step of an address that every host, file system and mail takes: a to z, digits and hyphens.
 * "Möhre" -> "moehre", "Sweet corn / maize" -> "sweet-corn-maize"; letters of other scripts by their number. The same name
 * always gives the same address, whatever other names there are; names that differ only in case, accents or signs share one.
 */
export function addressName(name: string): string {
  const plain = Array.from(name.normalize('NFC').toLowerCase(), (letter) => PLAIN[letter] ?? letter)
    .join('')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase();
  const written = Array.from(plain, (letter) => {
    if (/[a-z0-9]/.test(letter)) return letter;
    return /[\p{L}\p{N}]/u.test(letter) ? `-${numberOf(letter)}-` : '-';
  });
  const address = written.join('').replace(/-+/g, '-').replace(/^-|-$/g, '');
  return (address || `x-${Array.from(name, numberOf).join('-')}`).slice(0, 100).replace(/-$/, '');
}

const numberOf = (letter: string): string => (letter.codePointAt(0) ?? 0).toString(16);
