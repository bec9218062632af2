import { fill } from '../../wording/fill.ts';

const texts: Readonly<Record<string, string>> = JSON.parse(document.getElementById('texts')?.textContent ?? '{}');

/** A text of this page, handed over with it, its braces filled. */
export function say(key: string, values: Readonly<Record<string, string | number>> = {}): string {
  return fill(texts[`record.${key}`] ?? key, key, values);
}
