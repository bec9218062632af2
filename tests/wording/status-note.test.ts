import { expect, test } from 'vitest';
import { statusNote } from '../../src/wording/status-note.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeAnalysis } from '../support/make-result.ts';
import { makeTrial } from '../support/make-trial.ts';

const planned = makeTrial({ status: 'planned' });
const plan = { fixed: '2026-03-01' } as NonNullable<typeof planned.plan>;

test.each([
  {
    language: 'en',
    none: 'Nothing has been sown yet.',
    frozen:
      'Nothing has been sown yet. The plan stands here with its date and digest, so that a later change of the question shows.',
  },
  {
    language: 'de',
    none: 'Noch ist nichts gesät.',
    frozen:
      'Noch ist nichts gesät. Der Plan steht hier mit Datum und Prüfsumme, so dass es auffällt, wenn die Frage später geändert wird.',
  },
])('only of a frozen plan is it said that a later change shows ($language)', ({ language, none, frozen }) => {
  const note = (of: typeof planned) => statusNote(wordsFor(language), of, makeAnalysis());
  expect([note({ ...planned, plan: null }), note({ ...planned, plan })]).toEqual([none, frozen]);
});
