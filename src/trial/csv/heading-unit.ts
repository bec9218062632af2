import type { FileProblems } from '../file-problems.ts';
import { shown } from '../text/shown.ts';
import { readUnit, UNIT_NAMES, type Unit } from '../text/read-unit.ts';
import type { Heading } from './table.ts';

/**
 * The unit in which a column of a known unit is written. Reported: a unit that is none of that kind (then
 * null), and, as a notice, one that was not written and is assumed.
 *
 * @param target unit in which the column is kept: `g`, `years`, `days`, `h`
 */
export function headingUnit(heading: Heading, target: Unit, report: FileProblems): Unit | null {
  if (heading.unit === null) {
    if (heading.name !== 'day') {
      report.notice(heading.place, {
        rule: 'unit-assumed',
        message: `no unit in the heading; ${target.name} was assumed`,
        remedy: `Write "${heading.label} (${target.name})", or the unit you used.`,
      });
    }
    return target;
  }
  const unit = readUnit(heading.unit);
  if (unit?.kind === target.kind) return unit;
  report.error(heading.place, {
    rule: 'unknown-unit',
    message: `expected a unit of ${target.kind}, such as ${target.name}; found ${shown(heading.unit)}`,
    remedy: `Units understood: ${UNIT_NAMES.join(', ')}.`,
  });
  return null;
}
