import type { PrintDocument } from './document.ts';
import { breakable } from './breakable.ts';
import { drawable } from './drawable.ts';
import { shapeOf } from './pictures/shape-of.ts';
import { isolated } from './isolated.ts';
import { writable } from './writable.ts';

/**
 * The document as the template reads it: names in Typst's manner, language and date in parts, the shape of each picture,
 * and every string writable with our faces.
 */
export function plainDocument({ pictures, language, date, pageOf, ...rest }: PrintDocument): object {
  const [lang = 'en', region] = language.split('-');
  return {
    ...(written(rest) as object),
    'page-of': pageOf,
    language: [lang, region && /^[A-Za-z]{2}$/.test(region) ? region : null],
    date: date === null ? null : date.split('-').map(Number),
    pictures: Object.fromEntries(Object.entries(pictures).map(([name, svg]) => [name, drawable(svg)])),
    shapes: Object.fromEntries(Object.entries(pictures).map(([name, svg]) => [name, shapeOf(svg)])),
  };
}

/** Keys whose strings the template reads as names and nobody else reads. */
const NAMES: ReadonlySet<string> = new Set(['kind', 'style', 'picture', 'mark']);

function written(value: unknown): unknown {
  if (typeof value === 'string') return isolated(breakable(writable(value)));
  if (Array.isArray(value)) return value.map(written);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [kebab(key), NAMES.has(key) ? inner : written(inner)]),
  );
}

const kebab = (key: string) => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
