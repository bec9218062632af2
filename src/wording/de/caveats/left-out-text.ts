import type { Verdict } from '../../../analysis/analysis.ts';
import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import { leftOutReason } from '../left-out-reason.ts';
import { counted } from '../counted.ts';
import { list } from '../list.ts';
import { verdictPhrase } from '../verdict-phrase.ts';
import type { Telling } from './telling.ts';

/** What was left out, why, and what becomes of the finding with it in. */
export function leftOutText(
  { sowings, verdicts }: Evidence['sowings-left-out'],
  { label, tray, noun }: Telling,
): CaveatText {
  const named = sowings.slice(0, 4).map(({ sowing, reason, what }) => `${sowing} (${what ?? leftOutReason(reason)})`);
  const more = sowings.length > named.length ? [`${sowings.length - named.length} weitere`] : [];
  const were = sowings.length === 1 ? 'wurde' : 'wurden';
  const all = `Mit allen ${tray(2, 'sowing', 'dative')}`;
  const effects = verdicts.map(({ treatment, verdict, withThem }) =>
    effect(all, verdicts.length > 1 ? ` bei ${label(treatment)}` : '', verdict, withThem),
  );
  return {
    reason: `${counted(sowings.length, noun())} ${were} weggelassen`,
    sentence: `${tray(sowings.length)} ${list([...named, ...more])} ${were} weggelassen. ${effects.join(' ')}`.trim(),
  };
}

function effect(all: string, about: string, verdict: Verdict, withThem: Verdict | null): string {
  if (withThem === null) return `${all} ließ sich das Ergebnis${about} nicht berechnen.`;
  if (withThem === verdict) return `${all} ändert sich das Ergebnis${about} nicht.`;
  return `${all} ändert sich das Ergebnis${about} zu „${verdictPhrase(withThem)}“.`;
}
