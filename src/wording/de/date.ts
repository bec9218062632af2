const MONTHS = [
  'Januar',
  'Februar',
  'März',
  'April',
  'Mai',
  'Juni',
  'Juli',
  'August',
  'September',
  'Oktober',
  'November',
  'Dezember',
];

/** 2026-04-04 -> "4. April 2026"; 2026-04 -> "April 2026"; anything else as it was written. */
export function date(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d\d)(?:-(\d\d))?$/.exec(iso) ?? [];
  const name = MONTHS[Number(month) - 1];
  if (name === undefined) return iso;
  return day === undefined ? `${name} ${year}` : `${Number(day)}.\u00A0${name} ${year}`;
}
