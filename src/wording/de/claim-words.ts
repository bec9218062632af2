import type { ClaimWords } from '../words.ts';

/** Words by which a sentence takes a side, or leaves it open. */
export const claimWords = (): ClaimWords => WORDS;

const WORDS: ClaimWords = {
  higher: '(?<!\\p{L})(?:mehr|höher|besser|länger|schwerer|größer|kräftiger|schneller)(?!\\p{L})',
  lower: '(?<!\\p{L})(?:weniger|niedriger|geringer|schlechter|kürzer|leichter|kleiner|schwächer|langsamer)(?!\\p{L})',
  earlier: '(?<!\\p{L})(?:früher|eher|schneller)(?!\\p{L})',
  later: '(?<!\\p{L})(?:später|langsamer)(?!\\p{L})',
  same: '(?<!\\p{L})(?:gleich|ähnlich|ebenso|zu klein|kleiner(?:er|en)? Unterschied|(?:kleiner|weniger|geringer) als)(?!\\p{L})',
  unclear:
    '(?<!\\p{L})(?:unklar|ungewiss|unsicher|unbekannt|offen|ob|vielleicht|womöglich|erster Blick|kein Beweis|zu wenige?|zu früh|nicht (?:\\p{L}+ )?(?:zeigen|gezeigt|sagen|bekannt|klar|sicher|geklärt|entscheiden|erkennen|prüfbar|bewiesen|zuordnen))(?!\\p{L})|(?<!\\p{L})(?:kann|können|konnte|könnte|könnten|ließ|lässt|lassen)(?!\\p{L})[^.!?]*(?<!\\p{L})(?:nicht|nichts|kein\\p{L}*)(?!\\p{L})|nicht sagen',
};
