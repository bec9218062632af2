import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { retestPlan } from '../../../src/analysis/storage/retest-plan.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const words = wordsFor('de');
const storage = { started: '2024-03-01', tests: [0, 1, 2, 3.5, 5], left: { packet: 1, jar: 3 } };
const series = storageTrial(
  { start: alike({ 0: 48 }, 3), packet: alike({ 1: 44, 2: 20 }), jar: alike({ 1: 46, 2: 42 }) },
  { storage },
);
function said(trial: Trial, level: number | null): string {
  const plan = retestPlan(trial, analyse(trial), level);
  return plan === null ? '' : words.retest(trial, plan, level).join('\n');
}

test('when to test again, what is left, how it stands', () => {
  expect(said(series, 85)).toMatchInlineSnapshot(`
    "Nächste Prüfung: nach 3,5 Jahren Lagerung, am 31. August 2027. Dann nach 5 Jahren Lagerung, am 1. März 2029.
    Tüten oder Gläser übrig: Paper packet 1 und Sealed jar 3.
    Das reicht nicht für alle 2 geplanten Prüfungen: Paper packet für keine wie die letzte, die 2 öffnete; Sealed jar für 1 wie die letzte, die 2 öffnete.
    Diese Gruppe baut eine Partie neu an, sobald weniger als 85 % dessen aufgeht, was am Anfang aufging.
    Paper packet: Die Grenze ist 82 von 100; nach 2 Jahren gingen 40 von 100 auf (29 bis 52), darunter.
    Sealed jar: Die Grenze ist 82 von 100; nach 2 Jahren gingen 84 von 100 auf (74 bis 91), zu nah, um zu sagen, auf welcher Seite."
  `);
});

test('one test to come, no date; all sown and enough left', () => {
  expect(said({ ...series, storage: { started: null, tests: [1, 2, 5], left: { jar: 1 } } }, null))
    .toMatchInlineSnapshot(`
      "Nächste Prüfung: nach 5 Jahren Lagerung.
      Tüten oder Gläser übrig: Sealed jar 1.
      Das reicht nicht für die nächste Prüfung: Sealed jar für keine wie die letzte, die 2 öffnete."
    `);
  expect(said({ ...series, storage: { ...storage, tests: [1, 2] } }, null)).toMatchInlineSnapshot(`
    "Alle geplanten Prüfungen sind gesät.
    Tüten oder Gläser übrig: Paper packet 1 und Sealed jar 3."
  `);
});
