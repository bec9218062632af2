import type { Heading, Table } from '../csv/table.ts';
import { readUnit, UNIT_NAMES } from '../text/read-unit.ts';
import { shown } from '../text/shown.ts';

/** Unit of a trait as written everywhere; one that is not known is kept as it stands, and said. */
export function traitUnit({ unit, label, place }: Heading, { report }: Table): string | null {
  if (unit === null || unit === '') {
    const [, name, last] = /^(.*\p{L})[ _.-]+(mm|cm|mg|kg|g|oz|lb)$/iu.exec(label) ?? [];
    if (unit === null && name && last) {
      report.warning(place, {
        rule: 'unit-not-in-brackets',
        message: `the unit of ${shown(label)} is not in brackets, so its numbers are printed without a unit`,
        remedy: `Write ${shown(`${name} (${last})`)} here, and ${shown(`column: ${name}`)} under outcomes in trial.yaml.`,
      });
    }
    return null;
  }
  const known = readUnit(unit);
  if (known) return known.name;
  report.warning(place, {
    rule: 'unknown-unit',
    message: `the unit ${shown(unit)} of ${shown(label)} is not known here; it is printed as it stands`,
    remedy: `Units understood: ${UNIT_NAMES.join(', ')}.`,
  });
  return unit;
}
