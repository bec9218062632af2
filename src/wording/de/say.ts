import { fill } from '../fill.ts';
import type { UiKey } from '../words.ts';
import { ui } from './ui.ts';

/** A label with its braces filled. Throws a RangeError where a value is missing. */
export const say = (key: UiKey, values: Readonly<Record<string, string | number>>): string =>
  fill(ui[key], key, values);
