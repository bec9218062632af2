import { expect, test } from 'vitest';
import type { Moisture } from '../../../src/analysis/analysis.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeAnalysis, makeGroup, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeOutcome, makeTrial } from '../../support/make-trial.ts';
import { told } from '../../support/tell.ts';

const words = wordsFor('de');
const limits = (trial: Parameters<typeof words.cannotTell>[0]) =>
  words.cannotTell(trial, publishedAnalysis(trial, words)).join('\n');

test('what a trial cannot tell', () => {
  const one = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { outcomes: [makeOutcome()] });
  expect(limits(one)).toMatchInlineSnapshot(`
    "Ob sich die Behandlungen überhaupt unterscheiden: Mit nur einer Schale je Behandlung lässt sich gewöhnlicher Zufall nicht von der Behandlung trennen.
    Wie gut sich das Saatgut hält: Es wurde gleich nach der Behandlung gesät.
    Ob Samen, die nicht aufgingen, tot waren oder nur ruhten: Niemand hat nachgesehen.
    Was aus den Pflanzen wird: Nach Tag 14 wurde nichts aufgezeichnet.
    Wie sich das Saatgut im Freien verhielte, in kaltem oder verkrustetem Boden.
    Wie sich anderes Saatgut verhielte: Eine Partie ist nicht jede Partie, ein Jahr und ein Ort sind nicht alle."
  `);
  const clear = germinationTrial(
    {
      packet: [
        [30, 50],
        [31, 50],
        [29, 50],
        [32, 50],
      ],
      jar: [
        [44, 50],
        [45, 50],
        [43, 50],
        [44, 50],
      ],
    },
    {
      outcomes: [makeOutcome({ matters: 10 })],
      sowing: { container: 'a row', assignment: 'random', treated: 'each-sowing', block: null },
    },
  );
  expect(limits(clear)).toMatchInlineSnapshot(`
    "Wie gut sich das Saatgut hält: Es wurde gleich nach der Behandlung gesät.
    Ob Samen, die nicht aufgingen, tot waren oder nur ruhten: Niemand hat nachgesehen.
    Warum: Er zeigt, dass sich das Saatgut unterschied, nicht, wodurch.
    Was aus den Pflanzen wird: Nach Tag 14 wurde nichts aufgezeichnet.
    Wie sich das Saatgut drinnen oder bei anderem Boden und Wetter verhielte.
    Wie sich anderes Saatgut verhielte: Eine Partie ist nicht jede Partie, ein Jahr und ein Ort sind nicht alle."
  `);
  const unclear = germinationTrial(
    {
      packet: [
        [40, 50],
        [30, 50],
        [45, 50],
      ],
      jar: [
        [42, 50],
        [38, 50],
        [47, 50],
      ],
    },
    {
      outcomes: [makeOutcome()],
    },
  );
  expect(limits(unclear)).toMatchInlineSnapshot(`
    "Kleine Unterschiede: Einen Unterschied von 38 je 100 zeigt ein solcher Versuch etwa in 4 von 5 Fällen, einen kleineren seltener.
    Ob die Behandlungen gleich genug sind: Ein kleinster Unterschied, der zählt, war nicht festgelegt. So fehlt der Maßstab.
    Wie gut sich das Saatgut hält: Es wurde gleich nach der Behandlung gesät.
    Ob Samen, die nicht aufgingen, tot waren oder nur ruhten: Niemand hat nachgesehen.
    Was aus den Pflanzen wird: Nach Tag 14 wurde nichts aufgezeichnet.
    Wie sich das Saatgut im Freien verhielte, in kaltem oder verkrustetem Boden.
    Wie sich anderes Saatgut verhielte: Eine Partie ist nicht jede Partie, ein Jahr und ein Ort sind nicht alle."
  `);
  expect(limits({ ...unclear, status: 'growing' })).toBe(
    'Irgendetwas über die Behandlungen: Noch ist nichts verglichen.',
  );
});

test('an impression stands beside the counts', () => {
  const trial = germinationTrial({ packet: [[20, 25]], jar: [[22, 25]] }, { impression: ' The jar seemed quicker. ' });
  const [row] = words.impression(trial, publishedAnalysis(trial, words));
  expect(row).toMatchInlineSnapshot(`
    {
      "counts": "Die Zählungen: Paper packet: 80 von 100 (20 von 25 Samen, 1 Schale; nach dem Zufall der Samen allein passt alles zwischen 61 und 91). Sealed jar: 88 von 100 (22 von 25 Samen, 1 Schale; nach dem Zufall der Samen allein passt alles zwischen 70 und 96).",
      "impression": "Der Eindruck der Beteiligten, nicht gezählt: „The jar seemed quicker.“",
      "lot": null,
    }
  `);
  expect(words.impression({ ...trial, impression: null }, makeAnalysis())).toEqual([]);
});

const lost: Moisture = {
  lot: 'leek',
  treatment: 'jar',
  waterLost: 4.1,
  moistureBefore: null,
  moistureAfter: null,
  waterLostRange: { lower: 2.74, upper: 5.41 },
  moistureAfterRange: null,
  batch: null,
  repeat: null,
};
const weighing = (mass: number) => ({
  lot: 'leek',
  treatment: 'jar',
  stage: 'after' as const,
  mass,
  container: null,
  repeat: null,
  scaleStep: 1,
  batch: null,
  date: null,
  line: 2,
});

test('water lost, with what the steps of the scale allow', () => {
  const trial = makeTrial({ weighings: [weighing(73), weighing(70)] });
  const said = (...moisture: Moisture[]) => words.moisture(trial, makeAnalysis({ moisture })).join('\n');
  expect(said(lost)).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ verlor 4,1 % seiner Masse. Schritte der Waage von 1 g lassen 2,7 bis 5,5 % zu. Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt."`,
  );
  expect(said({ ...lost, waterLostRange: null })).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ verlor 4,1 % seiner Masse. Der Schritt der Waage ist nicht angegeben; wie genau das ist, ist also nicht bekannt. Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt."`,
  );
  expect(said(lost, { ...lost, waterLost: 3.2, waterLostRange: { lower: 1.84, upper: 4.56 } })).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ verlor 3,2 bis 4,1 % seiner Masse (2 Wägungen). Schritte der Waage von 1 g lassen 1,8 bis 5,5 % zu. Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt."`,
  );
  expect(
    said({ ...lost, moistureBefore: 9.5, moistureAfter: 5.63, moistureAfterRange: { lower: 4.31, upper: 6.98 } }),
  ).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ verlor 4,1 % seiner Masse. Schritte der Waage von 1 g lassen 2,7 bis 5,5 % zu. Danach war der Feuchtegehalt 5,6 %, am Anfang 9,5 % (bezogen auf die ganze Masse; die Waage lässt 4,3 bis 7,0 % zu)."`,
  );
  expect(said({ ...lost, waterLost: 0.2, waterLostRange: { lower: -1.2, upper: 1.6 } })).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ verlor 0,2 % seiner Masse. Schritte der Waage von 1 g lassen alles zwischen 1,2 % Zunahme und 1,6 % Verlust zu. Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt."`,
  );
  expect(said({ ...lost, waterLost: -0.4, waterLostRange: { lower: -0.6, upper: -0.2 } })).toMatchInlineSnapshot(
    `"Das Saatgut „Sealed jar“ nahm um 0,4 % seiner Masse zu. Schritte der Waage von 1 g lassen eine Zunahme von 0,2 bis 0,6 % zu. Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt."`,
  );
  expect(
    said({ ...lost, treatment: null, waterLost: null, moistureBefore: 9.5, waterLostRange: null }),
  ).toMatchInlineSnapshot(`"Das Saatgut, wie es kam, hatte 9,5 % Feuchtegehalt."`);
});

test('what was left out, and the finding with it in', () => {
  const trial = germinationTrial(
    {
      packet: [
        [40, 50],
        [41, 50],
        [39, 50],
      ],
      jar: [
        [45, 50],
        [48, 50],
        [46, 50],
        [2, 50],
      ],
    },
    {
      outcomes: [makeOutcome({ matters: 10 })],
      events: [{ day: 5, date: null, sowings: ['leek-jar-4'], what: 'knocked over on day 5', action: 'left-out' }],
    },
  );
  const { results } = publishedAnalysis(trial, words);
  const [result] = results;
  const [comparison] = result?.comparisons ?? [];
  if (!result || !comparison) throw new Error('the trial has no comparison');
  expect(words.leftOut(trial, result, comparison)).toMatchInlineSnapshot(`
    [
      "Schale leek-jar-4 (knocked over on day 5) wurde weggelassen.",
      "Mit allen Schalen: knapp unter 10 weniger je 100 (52 weniger bis 42 mehr). Das Ergebnis ändert sich zu „offen“.",
    ]
  `);
  const { trial: whole, result: none, comparison: nothing } = told({ estimate: 1, lower: -4, upper: 6 });
  expect(words.leftOut(whole, none, nothing)).toEqual([]);
});

test('a change from the plan, a sentence each', () => {
  const changes = [
    { what: 'outcomes.germination.day', planned: '14', done: '15' },
    { what: 'outcomes.germination.day', planned: 'cress 6, leek 14', done: '14' },
    { what: 'outcomes.germination.matters', planned: '10', done: null },
    { what: 'outcomes.height', planned: 'height', done: null },
    { what: 'treatments.tin', planned: null, done: 'Tin' },
    { what: 'sowings.s07.left-out', planned: null, done: 'dropped while moving' },
    { what: 'sowing.assignment', planned: 'random', done: 'by-hand' },
    { what: 'question', planned: 'Old?', done: 'New?' },
    { what: 'digest', planned: 'a', done: 'b' },
    { what: 'key_sha256', planned: 'a', done: 'b' },
  ];
  expect(words.planChanges(makeAnalysis({ plan: { fixed: '2026-04-01', changes } })).join('\n')).toMatchInlineSnapshot(`
    "Der Plan sagte Tag 14; gezählt wurde am Tag 15.
    Tag (Zielgröße germination): Der Plan sagte „cress 6, leek 14“; jetzt ist es „14“.
    Kleinster Unterschied, der zählt (Zielgröße germination): Der Plan sagte „10“; jetzt ist es nichts.
    Im Plan, aber weggefallen: Zielgröße „height“.
    Neu gegenüber dem Plan: Behandlung „Tin“.
    s07 war geplant und wurde weggelassen: dropped while moving.
    Art der Aufstellung: Der Plan sagte „durch Los“; jetzt ist es „von Hand gewählt“.
    Frage: Der Plan sagte „Old?“; jetzt ist es „New?“.
    Die Datei mit dem Plan wurde geändert, nachdem er festgelegt war.
    Der Schlüssel ist nicht der, der mit dem Plan versiegelt wurde."
  `);
});

test('in short: one finding a comparison of the primary outcome, pooled ones first', () => {
  const { trial, analysis, result, comparison } = told({ estimate: 4, lower: -9, upper: 17 });
  const pooled = { ...comparison, lot: 'all', lots: ['leek', 'cress'] };
  const both = { ...result, comparisons: [comparison, pooled] };
  const other = { ...result, outcome: 'height', primary: false };
  const findings = words.inShort(trial, { ...analysis, results: [other, both] });
  expect(findings.map(({ comparison: { lot } }) => lot)).toEqual(['all', 'leek']);
  expect(findings[0]?.mark).toEqual({ words: 'offen', shape: 'open' });
  expect(words.inShort(trial, { ...analysis, results: [] })).toEqual([]);
});

test('a storage series test by test', () => {
  const trial = makeTrial({ storage: { started: '2024-10-01', tests: [0, 1], left: {} } });
  const at = (stored: number, packet: number, jar: number) => [
    makeGroup('packet', { stored, estimate: packet, unit: 'batch' }),
    makeGroup('jar', { stored, estimate: jar, unit: 'batch' }),
  ];
  const groups = [...at(0, 95, 95), ...at(0.5, 93.5, 94), ...at(1, 84.2, 89.9)];
  expect(words.storageSeries(trial, makeAnalysis({ results: [makeResult({ groups })] })).join('\n'))
    .toMatchInlineSnapshot(`
      "Am Anfang: Paper packet 95 von 100 und Sealed jar 95 von 100 (4 und 4 Chargen).
      Nach 6 Monaten: Paper packet 94 von 100 und Sealed jar 94 von 100 (4 und 4 Chargen).
      Nach 1 Jahr: Paper packet 84 von 100 und Sealed jar 90 von 100 (4 und 4 Chargen).
      3 Prüftermine; es wird nichts vorausgesagt."
    `);
  expect(words.storageSeries(trial, makeAnalysis())).toEqual([]);
});
