import { shown } from '../text/shown.ts';
import type { Table } from './table.ts';

/** Reports every heading that stands twice, whatever its letter case and unit. */
export function refuseRepeatedHeadings({ headings, report }: Table): void {
  const seen = new Map<string, string | null>();
  for (const { name, label, place } of headings) {
    const first = seen.get(name);
    if (first === undefined) seen.set(name, place.cell);
    else {
      report.error(place, {
        rule: 'repeated-heading',
        message: `the heading ${shown(label)} stands twice, first in cell ${first}`,
        remedy: 'Give each column its own heading, or take one column out.',
      });
    }
  }
}
