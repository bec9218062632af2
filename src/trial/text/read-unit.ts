export interface Unit {
  /** As it is written everywhere: `cm`. */
  readonly name: string;
  readonly kind: 'length' | 'mass' | 'temperature' | 'time' | 'share';
  /** How many of the kind's base unit (mm, g, days, %) this unit holds; null for temperatures. */
  readonly factor: number | null;
}

const YEAR = 365.25; // days, the Julian year; a month is a twelfth of it

const UNITS: readonly Unit[] = [
  { name: 'mm', kind: 'length', factor: 1 },
  { name: 'cm', kind: 'length', factor: 10 },
  { name: 'm', kind: 'length', factor: 1000 },
  { name: 'in', kind: 'length', factor: 25.4 },
  { name: 'mg', kind: 'mass', factor: 0.001 },
  { name: 'g', kind: 'mass', factor: 1 },
  { name: 'kg', kind: 'mass', factor: 1000 },
  { name: 'oz', kind: 'mass', factor: 28.349523125 }, // avoirdupois, exact by definition of the pound
  { name: 'lb', kind: 'mass', factor: 453.59237 }, // international pound of 1959, exact
  { name: '°C', kind: 'temperature', factor: null },
  { name: '°F', kind: 'temperature', factor: null },
  { name: 'h', kind: 'time', factor: 1 / 24 },
  { name: 'days', kind: 'time', factor: 1 },
  { name: 'weeks', kind: 'time', factor: 7 },
  { name: 'months', kind: 'time', factor: YEAR / 12 },
  { name: 'years', kind: 'time', factor: YEAR },
  { name: '%', kind: 'share', factor: 1 },
];

/** Other spellings that mean the same. */
const SPELLINGS: Readonly<Record<string, string>> = {
  hour: 'h',
  hours: 'h',
  hrs: 'h',
  day: 'days',
  d: 'days',
  week: 'weeks',
  month: 'months',
  year: 'years',
  yr: 'years',
  yrs: 'years',
  gram: 'g',
  grams: 'g',
  inch: 'in',
  inches: 'in',
  c: '°C',
  f: '°F',
};

/** Every unit understood, for messages. */
export const UNIT_NAMES = UNITS.map(({ name }) => name);

/** The unit written in a heading's brackets, or null where it is none that is understood. */
export function readUnit(written: string): Unit | null {
  const text = written.trim().toLowerCase();
  const name = (Object.hasOwn(SPELLINGS, text) ? SPELLINGS[text] : undefined) ?? text;
  return UNITS.find((unit) => unit.name.toLowerCase() === name.toLowerCase()) ?? null;
}
