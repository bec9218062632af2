import { shown } from '../text/shown.ts';
import type { Check } from './check.ts';

/** Reports every second check of one sowing on one day. */
export function refuseRepeatedChecks(checks: readonly Check[]): void {
  const seen = new Map<string, Check>();
  for (const check of checks) {
    const key = JSON.stringify([check.sowing, check.day]);
    const first = seen.get(key);
    if (!first) {
      seen.set(key, check);
      continue;
    }
    const where =
      first.line === check.line ? `cell ${first.place('germinated').cell} already` : `line ${first.line} already`;
    check.report.error(check.place('sowing'), {
      rule: 'repeated-check',
      message: `sowing ${shown(check.sowing)} was checked on day ${check.day} in ${where}`,
      remedy: 'Keep the row that is right; two people who counted the same tray on one day go into different notes.',
    });
  }
}
