import type { Analysis, Caveat } from '../../analysis/analysis.ts';
import type { Evidence } from '../../analysis/caveats/evidence.ts';
import type { Trial } from '../../trial/trial.ts';
import { limitsOf, type Limit } from '../limits-of.ts';
import { caveatWords } from './caveats/caveat-words.ts';
import { containerWord } from './container-word.ts';
import { detectableText } from './detectable-text.ts';
import { changesText } from './caveats/changes-text.ts';
import { list } from './list.ts';
import { number } from './number.ts';
import { storedText } from './stored-text.ts';
import { unitWord } from './unit-word.ts';

/** What a trial cannot tell, a sentence each. */
export const cannotTell = (trial: Trial, analysis: Analysis): readonly string[] =>
  limitsOf(trial, analysis)
    .map((limit) => limitText(trial, analysis, limit))
    .filter((text) => text !== null);

const IN_THE_OPEN = ['row', 'bed', 'plot'];

function limitText(trial: Trial, analysis: Analysis, limit: Limit): string | null {
  const tray = unitWord(trial, 'sowing');
  switch (limit.id) {
    case 'not-yet':
      return 'Anything about the treatments: nothing has been compared yet.';
    case 'any-difference':
      return `Whether the treatments differ at all: with one ${tray} of a kind, ordinary luck cannot be told from the treatment.`;
    case 'cause': {
      const reasons = limit.caveats.map((caveat) => caveatWords(trial, analysis, caveat).reason);
      return `What caused a difference, or hid one: ${list([...new Set(reasons)])}.`;
    }
    case 'small-differences': {
      return `Small differences: of two kinds ${detectableText(limit.detectable, limit.result)} apart, a trial like this shows the difference about 4 times in 5; of smaller ones, less often.`;
    }
    case 'alike':
      return 'Whether the treatments are alike: no smallest difference that matters was set, so there is nothing to measure likeness by.';
    case 'of-caveat':
      return ofCaveat(trial, limit.caveat);
    case 'forecast':
      return `How the seed will come up after more than ${storedText(limit.last)} in storage: no forecast is made.`;
    case 'why':
      return 'Why: it shows that the seed differed, not by what means.';
    case 'later':
      return `What becomes of the plants: nothing was recorded after day ${number(limit.day)}.`;
    case 'open-ground':
      return IN_THE_OPEN.includes(containerWord(trial.sowing.container))
        ? 'How the seed would do indoors, or in other soil and weather.'
        : 'How the seed would do in open ground, in cold or crusted soil.';
    case 'other-seed':
      return limit.lots === 1
        ? 'How other seed would do: one lot is not every lot, one season and one place are not all.'
        : `How other seed would do: ${limit.lots} lots are not every lot, one season and one place are not all.`;
  }
}

function ofCaveat(trial: Trial, caveat: Caveat): string | null {
  switch (caveat.id) {
    case 'two-changes': {
      const { changes } = caveat.evidence as unknown as Evidence['two-changes'];
      return `Which of the things that differed made a difference: ${changesText(trial, changes)}.`;
    }
    case 'tested-straight-away':
      return 'How well the seed keeps: it was sown straight after the treatment.';
    case 'start-moisture-unknown':
      return 'How dry the seed is now: moisture at the start was not measured.';
    case 'ungerminated-not-sorted':
      return 'Whether seed that did not come up was dead or only resting: nobody looked.';
    case 'survivors-only':
      return 'How the seed that stayed below would have grown: only what came up could be measured.';
    case 'no-room':
      return 'Whether older seed or colder soil would show a gain: here nearly everything came up.';
    default:
      return null;
  }
}
