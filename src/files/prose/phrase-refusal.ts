import type { Refusal } from '../../trial/refusal.ts';
import { shown } from '../../trial/text/shown.ts';
import type { FoundPhrase } from './guarded-phrases.ts';

/** A guarded phrase as a warning or an error says it; inside a claim it is an error. */
export function phraseRefusal({ phrase, found }: FoundPhrase, inClaim = false): Refusal {
  return {
    rule: `phrase-${phrase.id}`,
    message: `${inClaim ? 'the claim says' : 'found'} ${shown(found)}: ${phrase.reason}`,
    remedy: `Write instead: ${phrase.offer}.`,
  };
}
