import type { Verdict } from '../../../analysis/analysis.ts';
import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import { counted } from '../counted.ts';
import { leftOutReason } from '../left-out-reason.ts';
import { list } from '../list.ts';
import { verdictPhrase } from '../verdict-phrase.ts';
import { sentence } from '../../sentence.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import type { Telling } from './telling.ts';

/** What was left out, why, and what becomes of the finding with it in. */
export function leftOutText({ sowings, verdicts }: Evidence['sowings-left-out'], { label, tray }: Telling): CaveatText {
  const named = sowings.slice(0, 4).map(({ sowing, reason, what }) => `${sowing} (${what ?? leftOutReason(reason)})`);
  const more = sowings.length > named.length ? [`${sowings.length - named.length} more`] : [];
  const were = sowings.length === 1 ? 'was' : 'were';
  const effects = verdicts.map(({ treatment, verdict, withThem }) =>
    effect(
      verdicts.length > 1 ? ` about ${label(treatment)}` : '',
      sowings.length === 1 ? 'it' : 'them',
      verdict,
      withThem,
    ),
  );
  return {
    reason: `${counted(sowings.length, tray())} ${were} left out`,
    sentence:
      `${sentence(tray(sowings.length))} ${list([...named, ...more])} ${were} left out. ${effects.join(' ')}`.trim(),
  };
}

function effect(about: string, them: string, verdict: Verdict, withThem: Verdict | null): string {
  if (withThem === null) return `What the finding${about} would be with ${them} in could not be worked out.`;
  if (withThem === verdict) return `With ${them} in, the finding${about} does not change.`;
  return `With ${them} in, the finding${about} changes to “${verdictPhrase(withThem)}”.`;
}
