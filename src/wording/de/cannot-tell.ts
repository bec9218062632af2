import type { Analysis, Caveat } from '../../analysis/analysis.ts';
import type { Evidence } from '../../analysis/caveats/evidence.ts';
import type { Trial } from '../../trial/trial.ts';
import { limitsOf, type Limit } from '../limits-of.ts';
import { sentence } from '../sentence.ts';
import { article } from './article.ts';
import { caveatWords } from './caveats/caveat-words.ts';
import { changesText } from './caveats/changes-text.ts';
import { detectableText } from './detectable-text.ts';
import { list } from './list.ts';
import { number } from './number.ts';
import { unitNoun } from './unit-noun.ts';
import { storedText } from './stored-text.ts';

/** What a trial cannot tell, a sentence each. */
export const cannotTell = (trial: Trial, analysis: Analysis): readonly string[] =>
  limitsOf(trial, analysis)
    .map((limit) => limitText(trial, analysis, limit))
    .filter((text) => text !== null);

const IN_THE_OPEN = /(?:reihe|beet|parzelle)$/i;

function limitText(trial: Trial, analysis: Analysis, limit: Limit): string | null {
  const tray = unitNoun(trial, 'sowing');
  switch (limit.id) {
    case 'not-yet':
      return 'Irgendetwas über die Behandlungen: Noch ist nichts verglichen.';
    case 'any-difference':
      return `Ob sich die Behandlungen überhaupt unterscheiden: Mit nur ${article('ein', tray.gender, 'dative')} ${tray.one} je Behandlung lässt sich gewöhnlicher Zufall nicht von der Behandlung trennen.`;
    case 'cause': {
      const reasons = limit.caveats.map((caveat) => caveatWords(trial, analysis, caveat).reason);
      return `Was einen Unterschied machte oder verdeckte: ${sentence(list([...new Set(reasons)]))}.`;
    }
    case 'small-differences':
      return `Kleine Unterschiede: Einen Unterschied von ${detectableText(limit.detectable, limit.result)} zeigt ein solcher Versuch etwa in 4 von 5 Fällen, einen kleineren seltener.`;
    case 'alike':
      return 'Ob die Behandlungen gleich genug sind: Ein kleinster Unterschied, der zählt, war nicht festgelegt. So fehlt der Maßstab.';
    case 'of-caveat':
      return ofCaveat(trial, limit.caveat);
    case 'forecast':
      return `Wie das Saatgut nach mehr als ${storedText(limit.last, 'dative')} Lagerung aufgehen wird: Es wird nichts vorausgesagt.`;
    case 'why':
      return 'Warum: Er zeigt, dass sich das Saatgut unterschied, nicht, wodurch.';
    case 'later':
      return `Was aus den Pflanzen wird: Nach Tag ${number(limit.day)} wurde nichts aufgezeichnet.`;
    case 'open-ground':
      return IN_THE_OPEN.test(tray.one)
        ? 'Wie sich das Saatgut drinnen oder bei anderem Boden und Wetter verhielte.'
        : 'Wie sich das Saatgut im Freien verhielte, in kaltem oder verkrustetem Boden.';
    case 'other-seed':
      return limit.lots === 1
        ? 'Wie sich anderes Saatgut verhielte: Eine Partie ist nicht jede Partie, ein Jahr und ein Ort sind nicht alle.'
        : `Wie sich anderes Saatgut verhielte: ${limit.lots} Partien sind nicht alle, ein Jahr und ein Ort auch nicht.`;
  }
}

function ofCaveat(trial: Trial, caveat: Caveat): string | null {
  switch (caveat.id) {
    case 'two-changes': {
      const { changes } = caveat.evidence as unknown as Evidence['two-changes'];
      return `Was von dem, was verschieden war, einen Unterschied machte: ${changesText(trial, changes)}.`;
    }
    case 'tested-straight-away':
      return 'Wie gut sich das Saatgut hält: Es wurde gleich nach der Behandlung gesät.';
    case 'start-moisture-unknown':
      return 'Wie trocken das Saatgut jetzt ist: Der Feuchtegehalt am Anfang wurde nicht gemessen.';
    case 'ungerminated-not-sorted':
      return 'Ob Samen, die nicht aufgingen, tot waren oder nur ruhten: Niemand hat nachgesehen.';
    case 'survivors-only':
      return 'Wie die Samen gewachsen wären, die unten blieben: Nur was aufging, konnte gemessen werden.';
    case 'no-room':
      return 'Ob älteres Saatgut oder kälterer Boden einen Gewinn zeigen würde: Hier ging fast alles auf.';
    default:
      return null;
  }
}
