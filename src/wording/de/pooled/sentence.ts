import type { Pooled } from '../../../analysis/pooled.ts';
import type { Ends, PooledFacts } from '../../pooled-facts.ts';
import { counted } from '../counted.ts';
import { differenceText } from '../difference-text.ts';
import { fitText } from '../fit-text.ts';
import { quoted } from '../quoted.ts';
import { rangeText } from '../range-text.ts';
import { sizeText } from '../size-text.ts';
import { anywhereText } from './anywhere-text.ts';
import { tellingOf } from './telling.ts';

/** What several trials say together; one template a case (wording.md, pooled). */
export function pooledSentence(answer: Pooled, facts: PooledFacts): string {
  const { words } = tellingOf(answer);
  const { interval, estimate, nextResult, results } = facts;
  const asked = facts.growersDiffer
    ? `${counted(facts.trials, 'grower')} gingen dieser Frage nach.`
    : `${counted(facts.trials, 'trial')} gingen dieser Frage nach.`;
  const ran = results ? resultsText(results, words) : '';
  if (facts.case === 'none') return 'Noch hat kein Versuch darauf geantwortet.';
  if (facts.case === 'one')
    return `Bisher ging 1 Person dieser Frage nach. ${ran}. Ein Versuch allein ist keine gemeinsame Antwort.`;
  if (!estimate || !interval) {
    return `${asked} ${ran}. Weniger als drei Versuche werden nicht zusammengefasst: Sie stehen nebeneinander.`;
  }

  const found = differenceText(estimate, words);
  const margin = answer.matters ? sizeText(answer.matters, words) : '';
  const fits = `die Daten passen ${fitText(interval.lower, interval.upper, words)}`;
  const next = nextResult ? ` Eine nächste Wiederholung kann ${anywhereText(nextResult, words)} liegen.` : '';
  return `${asked} ${ran}. ${finding()}${next}`;

  function finding(): string {
    const against = againstText(answer);
    switch (facts.case) {
      case 'matters':
      case 'different': {
        const beyond = facts.case === 'matters' ? `, alles jenseits der ${margin}, die zählen sollen` : '';
        return `Zusammen ergibt das für ${against}: ${facts.probably ? 'wahrscheinlich ' : ''}${found} (${fits}${beyond}).${because(facts)}`;
      }
      case 'cause-unclear':
        return `Zusammen ergibt das für ${against}: ${found} (${fits}). Versuche mit schweren eigenen Vorbehalten tragen die Hälfte davon oder mehr, also lässt sich nicht sagen, woran es lag.`;
      default: {
        const within = answer.within
          ? ` Wären ${margin} vorher vereinbart gewesen, gälte das als gleich genug.`
          : ' Das heißt nicht, dass beide gleich sind.';
        return `Zusammen ließ sich ein Unterschied nicht zeigen (${against}: ${found}; ${fits}).${within}`;
      }
    }
  }
}

/** „Eingeweicht“ gegenüber „Trocken“, as most trials call them. */
export const againstText = ({ treatment, control }: Pooled): string =>
  treatment && control
    ? `${quoted(treatment.label)} gegenüber ${quoted(control.label)}`
    : 'Behandlung gegenüber Kontrolle';

function resultsText({ lower, upper }: Ends, words: Parameters<typeof rangeText>[2]): string {
  const [low, high] = [differenceText(lower, words), differenceText(upper, words)];
  return low === high ? `Das Ergebnis war: ${low}` : `Die Ergebnisse: ${rangeText(lower, upper, words)}`;
}

const because = ({ probably, doubtful, trials }: PooledFacts): string =>
  probably
    ? ` „Wahrscheinlich“ heißt es, weil ${doubtful === trials ? `alle ${trials}` : `${doubtful} der ${trials}`} Versuche eigene Vorbehalte ${doubtful === 1 ? 'hat' : 'haben'}.`
    : '';
