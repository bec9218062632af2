import type { PrintDocument } from './document.ts';
import { drawable } from './drawable.ts';
import { writable } from './writable.ts';

/**
 * The document as the template reads it: names in Typst's manner, language and date in parts, and every
 * string writable with our faces.
 */
export function plainDocument({ pictures, language, date, pageOf, ...rest }: PrintDocument): object {
  const [lang = 'en', region] = language.split('-');
  return {
    ...(written(rest) as object),
    'page-of': pageOf,
    language: [lang, region && /^[A-Za-z]{2}$/.test(region) ? region : null],
    date: date === null ? null : date.split('-').map(Number),
    pictures: Object.fromEntries(Object.entries(pictures).map(([name, svg]) => [name, drawable(svg)])),
  };
}

function written(value: unknown): unknown {
  if (typeof value === 'string') return writable(breakable(value));
  if (Array.isArray(value)) return value.map(written);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [kebab(key), written(inner)]));
}

const kebab = (key: string) => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** A word longer than a column may be cut after every tenth letter, without a hyphen; an address stays whole to be copied. */
const breakable = (text: string) =>
  text.replace(/[^\s\u200B]{25,}/gu, (word) => (/^https?:/.test(word) ? word : inTens(word)));

const inTens = (word: string) =>
  Array.from(word, (letter, index) => (index > 0 && index % 10 === 0 ? `\u200B${letter}` : letter)).join('');
