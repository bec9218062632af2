import { expect, test } from 'vitest';
import { lotTitle } from '../../src/charts/lot-title.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { germinationTrial, makeLot } from '../support/make-trial.ts';

const lots = ['leek', 'onion', 'carrot'].map((id) => makeLot(id, id));
const trial = { ...germinationTrial({ packet: [[40, 50]], jar: [[41, 50]] }), lots };
const pooled = [makeComparison({ estimate: 1, parts: { lot: 'all', lots: ['leek', 'onion'] } })];

test('what several lots say together is headed by how many they are', () => {
  expect(lotTitle(trial, 'onion', pooled, wordsFor('en'))).toBe('Onion');
  expect(lotTitle(trial, 'all', pooled, wordsFor('en'))).toBe('Together: 2 lots');
  expect(lotTitle(trial, 'all', [makeComparison({ estimate: 1, parts: { lot: 'all' } })], wordsFor('en'))).toBe(
    'Together: 3 lots',
  );
  expect(lotTitle(trial, 'all', pooled, wordsFor('de'))).toBe('Zusammen: 2 Partien');
});
