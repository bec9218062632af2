import { expect, test } from 'vitest';
import { caveatLines } from '../../../src/wording/tables/caveat-lines.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeCaveat } from '../../support/make-result.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const trial = makeTrial({ lots: ['leek', 'cress', 'onion'].map((crop) => makeLot(crop, crop)) });
const linesOf = (language: string, ...told: (readonly [lot: string | null, sentence: string])[]) => {
  const words = wordsFor(language);
  const caveats = told.map(([lot, sentence]) =>
    makeCaveat('few-seeds', { lot, text: lot === null ? sentence : `${words.lotName(trial, lot)}: ${sentence}` }),
  );
  return caveatLines(words, trial, caveats);
};

test('what several lots have alike is said once and names them in the order of the trial', () => {
  const told = [['cress', 'One tray.'], ['leek', 'Two trays.'], ['leek', 'One tray.']] as const; // prettier-ignore
  expect(linesOf('en', ...told)).toEqual(['Leek: Two trays.', 'Leek and Cress: One tray.']);
  expect(linesOf('de', ...told)).toEqual(['Leek: Two trays.', 'Leek und Cress: One tray.']);
});

test('what names no lot stands as it is, once', () => {
  expect(linesOf('en', [null, 'One tray.'], [null, 'One tray.'])).toEqual(['One tray.']);
});
