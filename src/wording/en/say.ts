import type { UiKey } from '../words.ts';
import { ui } from './ui.ts';

/** A label with its braces filled. Throws a RangeError where a value is missing. */
export function say(key: UiKey, values: Readonly<Record<string, string | number>>): string {
  return ui[key].replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`say needs "${name}" for "${key}"`);
    return String(value);
  });
}
