import type { Place } from '../file-problems.ts';
import { plainText } from '../text/plain-text.ts';
import type { Heading } from './table.ts';

/** Reads `Height (cm)` as the name `height` with the unit `cm`. */
export function readHeading(written: string, index: number, place: Place): Heading {
  const text = plainText(written);
  const [, label = text, unit = null] = /^(.+?) ?[([]([^()[\]]*)[)\]]$/.exec(text) ?? [];
  const name = label.toLowerCase().replaceAll('_', ' ');
  return { name, label, unit: unit === null ? null : unit.trim(), index, place: { ...place, field: text } };
}
