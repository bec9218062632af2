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
    const where = first.line === check.line ? `cell ${first.cell()} already` : `line ${first.line} already`;
    check.say('error', 'sowing', {
      rule: 'repeated-check',
      message: `sowing ${shown(check.sowing)} was checked on day ${check.day} in ${where}`,
      remedy: 'Keep the one that is right and take the other out.',
    });
  }
}
