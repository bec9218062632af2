import { breakable } from './breakable.ts';
import type { PrintDocument } from './document.ts';
import { drawable } from './drawable.ts';
import { oneLiners } from './one-liners.ts';
import { shapeOf } from './pictures/shape-of.ts';
import { isolated } from './isolated.ts';
import { writable } from './writable.ts';

/**
 * The document as the template reads it: names in Typst's manner, language and date in parts, the shape of each picture,
 * the rows of tables that take one line, and every string writable with our faces.
 */
export function plainDocument(document: PrintDocument): object {
  const { pictures, language, date, pageOf, ...rest } = document;
  const [lang = 'en', region] = language.split('-');
  return {
    ...(written(rest, oneLiners(document)) as object),
    'page-of': pageOf,
    language: [lang, region && /^[A-Za-z]{2}$/.test(region) ? region : null],
    date: date === null ? null : date.split('-').map(Number),
    pictures: Object.fromEntries(Object.entries(pictures).map(([name, svg]) => [name, drawable(svg)])),
    shapes: Object.fromEntries(Object.entries(pictures).map(([name, svg]) => [name, shapeOf(svg)])),
  };
}

/** Keys whose strings the template reads as names and nobody else reads. */
const NAMES: ReadonlySet<string> = new Set(['kind', 'style', 'picture', 'mark']);

function written(value: unknown, oneLine: ReadonlyMap<unknown, readonly boolean[]>): unknown {
  if (typeof value === 'string') return isolated(breakable(writable(value)));
  if (Array.isArray(value)) return value.map((inner) => written(inner, oneLine));
  if (value === null || typeof value !== 'object') return value;
  const parts = Object.entries(value).map(([key, inner]) => [
    kebab(key),
    NAMES.has(key) ? inner : written(inner, oneLine),
  ]);
  return Object.fromEntries(oneLine.has(value) ? [...parts, ['one-line', oneLine.get(value)]] : parts);
}

const kebab = (key: string) => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
