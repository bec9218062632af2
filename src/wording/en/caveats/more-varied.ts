import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { sentence } from '../../sentence.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import type { Telling } from './telling.ts';

/** Trays of a kind differ beyond seed luck: what to look for, and where. */
export function moreVaried({ ranges }: Evidence['more-varied-than-luck'], { trays, tray }: Telling): CaveatText {
  const shown = ranges.map(
    ({ treatment, lowest, highest, limit }) =>
      `${trays(treatment)} from ${number(Math.round(lowest))} to ${number(Math.round(highest))} of 100, where luck alone seldom gives a gap above ${number(Math.floor(limit))}`,
  );
  return {
    reason: `${tray(2)} of a kind differ more than seed luck explains`,
    sentence: `${sentence(tray(2))} of a kind differ more than seed luck explains${shown.length === 0 ? '' : ` (${list(shown)})`}: look for a mix-up, mould, an edge. The range given allows for it.`,
  };
}
