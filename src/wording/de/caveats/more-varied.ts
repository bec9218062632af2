import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import type { Telling } from './telling.ts';

/** Trays of a kind differ beyond seed luck: what to look for, and where. */
export function moreVaried({ ranges }: Evidence['more-varied-than-luck'], { trays, tray }: Telling): CaveatText {
  const shown = ranges.map(
    ({ treatment, lowest, highest, limit }) =>
      `${trays(treatment)} reichen von ${number(Math.round(lowest))} bis ${number(Math.round(highest))} von 100, wo Zufall allein selten mehr als ${number(Math.floor(limit))} Abstand ergibt`,
  );
  const differ = 'derselben Behandlung unterscheiden sich stärker, als der Zufall der Samen erklärt';
  return {
    reason: `${tray(2)} ${differ}`,
    sentence: `${tray(2)} ${differ}${shown.length === 0 ? '' : ` (${list(shown)})`}. Zu suchen wäre nach einer Verwechslung, nach Schimmel, nach Randlage. Der angegebene Bereich rechnet das ein.`,
  };
}
