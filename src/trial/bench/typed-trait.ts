import { readHeading } from '../csv/read-heading.ts';
import { WHOLE_FILE } from '../file-problems.ts';
import { measurementsRow } from '../schema/measurements.ts';
import { isDayHeading } from '../tables/is-day-heading.ts';
import type { Trait } from '../trial.ts';
import { typedName } from './typed-name.ts';

/** Headings by which the other tables are told from measurements.csv. */
const NAMES = new Set(['lot', 'germinated', 'what', 'action', 'abnormal', 'hard', 'fresh', 'dead']);

/**
 * A trait as typed, `height (cm)` or its two parts, in the form in which a heading of measurements.csv is read back.
 * Null: no name that could be a heading, or one that has another meaning there.
 */
export function typedTrait(name: string, unit: string): Trait | null {
  const [column, inBrackets] = [typedName(name), typedName(unit)];
  if (column === null) return null;
  const written = inBrackets === null ? column : `${column} (${inBrackets})`;
  const heading = readHeading(written, 0, WHOLE_FILE);
  const isTaken =
    Object.hasOwn(measurementsRow.shape, heading.name) || NAMES.has(heading.name) || isDayHeading(heading);
  return isTaken || /^[=+\-@']/.test(heading.label) || /[()[\]]/.test(heading.label)
    ? null
    : { column: heading.label, unit: heading.unit === '' ? null : heading.unit };
}
