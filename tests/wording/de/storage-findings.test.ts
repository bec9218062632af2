import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { linesTable, lineTestsTable } from '../../../src/wording/tables/lines-table.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeLot, makeTreatment } from '../../support/make-trial.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const words = wordsFor('de');
const start = alike({ 0: 47 }, 3);
const fast = alike({ 1: 44, 2: 36, 4: 14 });
const slow = alike({ 1: 46, 2: 44, 4: 40 });

/** What is said of a storage series, a line a finding, its mark in front. */
function said(trial: Trial): string {
  const analysis = analyse(trial);
  const result = analysis.results.find(({ measure }) => measure === 'storage');
  if (result === undefined) return '';
  return `\n${words
    .storageFindings(trial, analysis, result)
    .map(({ mark, sentence }) => `${mark ? `[${mark.shape}: ${mark.words}] ` : ''}${sentence}`)
    .join('\n')}\n`;
}

test('one kind falls more slowly', () => {
  expect(said(storageTrial({ start, packet: fast, jar: slow }))).toMatchInlineSnapshot(`
    "
    [above: fiel langsamer] Bei „Sealed jar“ fiel die Keimung langsamer als bei „Paper packet“. Nach 4 Jahren gingen auf: bei „Paper packet“ 28 von 100 (19 bis 39) und bei „Sealed jar“ 80 von 100 (70 bis 87).
    Nach der Linie durch die Prüfungen ging bei „Paper packet“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis 3,4 Jahren; 6 Chargen in 3 Prüfungen nach dem Anfang).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Sealed jar“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
});

test('a doubt is named, a cause that cannot be told is not claimed', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  expect(said({ ...trial, sowing: { ...trial.sowing, assignment: 'by-hand' } })).toMatchInlineSnapshot(`
    "
    [above: wahrscheinlich fiel langsamer] Bei „Sealed jar“ fiel die Keimung wahrscheinlich langsamer als bei „Paper packet“. Wir sagen „wahrscheinlich“, denn die Schalen wurden von Hand aufgestellt, nicht durch Los. Nach 4 Jahren gingen auf: bei „Paper packet“ 28 von 100 (19 bis 39) und bei „Sealed jar“ 80 von 100 (70 bis 87).
    Nach der Linie durch die Prüfungen ging bei „Paper packet“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis 3,4 Jahren; 6 Chargen in 3 Prüfungen nach dem Anfang).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Sealed jar“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
  const place = trial.sowings.map((sowing) => ({ ...sowing, position: sowing.treatment === 'jar' ? 'left' : 'right' }));
  expect(said({ ...trial, sowings: place })).toMatchInlineSnapshot(`
    "
    [question: Ursache unklar] Die Keimung fiel verschieden schnell. Aber die Schalen „Sealed jar“ standen nur bei „left“ und die Schalen „Paper packet“ nur bei „right“. Woran es lag, lässt sich nicht sagen. Nach 4 Jahren gingen auf: bei „Paper packet“ 28 von 100 (19 bis 39) und bei „Sealed jar“ 80 von 100 (70 bis 87).
    Nach der Linie durch die Prüfungen ging bei „Paper packet“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis 3,4 Jahren; 6 Chargen in 3 Prüfungen nach dem Anfang).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Sealed jar“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
});

test('the control keeps longer; the series goes on', () => {
  expect(said(storageTrial({ start, packet: slow, jar: fast }, { status: 'growing' }))).toMatchInlineSnapshot(`
    "
    [below: fiel schneller] Bisher: Bei „Paper packet“ fiel die Keimung langsamer als bei „Sealed jar“. Nach 4 Jahren gingen auf: bei „Paper packet“ 80 von 100 (70 bis 87) und bei „Sealed jar“ 28 von 100 (19 bis 39).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Paper packet“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    Nach der Linie durch die Prüfungen ging bei „Sealed jar“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis 3,4 Jahren; 6 Chargen in 3 Prüfungen nach dem Anfang).
    "
  `);
});

test('no difference could be shown', () => {
  expect(said(storageTrial({ start, packet: slow, jar: alike({ 1: 46, 2: 43, 4: 41 }) }))).toMatchInlineSnapshot(`
    "
    [open: offen] Dass sich eines länger hält als das andere, ließ sich nicht zeigen; das heißt nicht, dass sie sich gleich halten. Nach 4 Jahren gingen auf: bei „Paper packet“ 80 von 100 (70 bis 87) und bei „Sealed jar“ 82 von 100 (72 bis 89).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Paper packet“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    Nach der Linie durch die Prüfungen ist die Keimung bei „Sealed jar“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 82 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
});

test('lines apart, of one slope', () => {
  const [packet, jar] = [alike({ 0: 48, 1: 46, 2: 43, 4: 35 }), alike({ 0: 42, 1: 38, 2: 32, 4: 21 })];
  expect(said(storageTrial({ packet, jar }))).toMatchInlineSnapshot(`
    "
    [open: getrennt, Tempo offen] Die Keimung verläuft nicht auf einer Linie. Dass die eine schneller fällt als die andere, ließ sich nicht zeigen. Nach 4 Jahren gingen auf: bei „Paper packet“ 70 von 100 (59 bis 79) und bei „Sealed jar“ 42 von 100 (31 bis 53).
    Nach der Linie durch die Prüfungen ist die Keimung bei „Paper packet“ noch nicht auf die Hälfte gefallen (96 von 100 am Anfang, 70 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    Nach der Linie durch die Prüfungen ging bei „Sealed jar“ nach 3,3 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis einer Zeit nach der letzten Prüfung; 6 Chargen in 3 Prüfungen nach dem Anfang).
    "
  `);
});

test('one jar of a kind at a test cannot tell', () => {
  const one = { 1: [[44, 50]], 2: [[36, 50]], 4: [[14, 50]] } as const; // prettier-ignore
  expect(said(storageTrial({ start, packet: one, jar: slow }))).toMatchInlineSnapshot(`
    "
    [question: lässt sich nicht sagen] Was sich länger hält, lässt sich nicht sagen. Nicht jede Behandlung hatte in jeder Prüfung zwei Gläser oder Tüten, die bekanntermaßen getrennt gelagert wurden; also lässt sich die Art der Lagerung nicht vom Zufall eines Glases trennen. Nach 4 Jahren gingen auf: bei „Paper packet“ 28 von 100 (17 bis 42) und bei „Sealed jar“ 80 von 100 (69 bis 88). Ein erster Blick, der eine Wiederholung mit zwei oder mehr davon in jeder Prüfung verdient.
    Nach der Linie durch die Prüfungen ging bei „Paper packet“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,5 Jahren bis 3,7 Jahren; 3 Chargen in 3 Prüfungen nach dem Anfang). Mit nur einer Charge je Prüfung ist das ein erster Blick.
    Nach der Linie durch die Prüfungen ist die Keimung bei „Sealed jar“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
});

test('three kinds', () => {
  const treatments = [makeTreatment('a', { label: 'A', control: true }), makeTreatment('b', { label: 'B' }), makeTreatment('c', { label: 'C' })]; // prettier-ignore
  expect(said(storageTrial({ start, a: fast, b: slow, c: slow }, { treatments }))).toMatchInlineSnapshot(`
    "
    [open: verschieden schnell] Die Keimung fiel nicht überall gleich schnell. Nach 4 Jahren gingen auf: bei „A“ 28 von 100 (19 bis 39), bei „B“ 80 von 100 (70 bis 87) und bei „C“ 80 von 100 (70 bis 87).
    Nach der Linie durch die Prüfungen ging bei „A“ nach 3,0 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,7 Jahren bis 3,4 Jahren; 6 Chargen in 3 Prüfungen nach dem Anfang).
    Nach der Linie durch die Prüfungen ist die Keimung bei „B“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    Nach der Linie durch die Prüfungen ist die Keimung bei „C“ noch nicht auf die Hälfte gefallen (94 von 100 am Anfang, 80 von 100 nach 4 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    "
  `);
});

test('why there is no half-life', () => {
  const only = { treatments: [makeTreatment('jar', { label: 'Jar', control: true })] };
  const series: readonly Readonly<Record<number, number>>[] = [
    { 0: 45, 5: 10 },
    { 0: 50, 1: 48, 2: 0 },
    { 0: 50, 1: 50, 2: 48 },
    { 0: 40, 1: 41, 2: 44 },
    { 0: 0, 1: 0, 2: 0 },
    { 1: 20, 2: 12, 3: 5 },
  ];
  expect(series.map((years) => said(storageTrial({ jar: alike(years) }, only))).join('')).toMatchInlineSnapshot(`
    "
    Bei „Jar“: 90 von 100 am Anfang, 20 von 100 nach 5 Jahren. Das sind zu wenige Prüftermine für eine Linie (2; nötig sind drei).

    Bei „Jar“ fiel die Keimung zu steil für eine Linie (100 von 100 am Anfang, 0 von 100 nach 2 Jahren): In allen Prüfungen bis auf eine ging alles auf oder nichts; wann sie bei der Hälfte war, ist also nicht bekannt.

    Bei „Jar“ ist die Keimung kaum gefallen (100 von 100 am Anfang, 96 von 100 nach 2 Jahren): In allen Prüfungen bis auf eine ging alles auf, das ist zu wenig für eine Linie.

    Bei „Jar“ zeigt sich kein Rückgang (80 von 100 am Anfang, 88 von 100 nach 2 Jahren). Das heißt nicht, dass es sich hält.

    Bei „Jar“ ging in keiner Prüfung etwas auf; wie lange es sich hält, lässt sich also nicht sagen.

    Nach der Linie durch die Prüfungen lag die Keimung bei „Jar“ schon in der ersten Prüfung unter der Hälfte (40 von 100 nach 1 Jahr, 10 von 100 nach 3 Jahren); wann sie bei der Hälfte war, ist also nicht bekannt.
    "
  `);
  const unbounded = { 0: 30, 1: 18, 2: 29, 3: 24 };
  expect(said(storageTrial({ jar: alike(unbounded, 1) }, only))).toMatchInlineSnapshot(`
    "
    Bei „Jar“ fiel die Keimung auf etwa die Hälfte (60 von 100 am Anfang, 48 von 100 nach 3 Jahren), aber die Prüfungen streuen so sehr, dass der Rückgang sich nicht von keinem trennen lässt. Eine Halbwertszeit wird nicht angegeben.
    "
  `);
});

test('a range that reaches beyond the tests is not given a number there; weeks are said in days', () => {
  const only = { treatments: [makeTreatment('jar', { label: 'Jar', control: true })] };
  expect(said(storageTrial({ jar: alike({ 0: 46, 1: 42, 2: 33, 3: 24 }, 1) }, only))).toMatchInlineSnapshot(`
    "
    Nach der Linie durch die Prüfungen ging bei „Jar“ nach 2,9 Jahren Lagerung noch die Hälfte auf (die Daten passen zu 2,2 Jahren bis einer Zeit nach der letzten Prüfung; 3 Chargen in 3 Prüfungen nach dem Anfang). Mit nur einer Charge je Prüfung ist das ein erster Blick.
    "
  `);
  const days = Object.fromEntries(Object.entries({ 0: 48, 10: 44, 20: 30, 40: 6 }).map(([day, count]) => [Number(day) / 365.25, [[count, 50] as const]])); // prettier-ignore
  expect(said(storageTrial({ jar: days }, only))).toMatchInlineSnapshot(`
    "
    Nach der Linie durch die Prüfungen ging bei „Jar“ nach 24 Tagen Lagerung noch die Hälfte auf (die Daten passen zu 19 Tagen bis 30 Tagen; 3 Chargen in 3 Prüfungen nach dem Anfang). Mit nur einer Charge je Prüfung ist das ein erster Blick.
    "
  `);
});

test('two lots are told one by one', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  const other = trial.sowings.map((sowing) => ({ ...sowing, id: `o-${sowing.id}`, lot: 'onion', batch: sowing.batch && `o-${sowing.batch}` })); // prettier-ignore
  const counts = trial.counts.map((count) => ({ ...count, sowing: `o-${count.sowing}` }));
  const both = { ...trial, lots: [...trial.lots, makeLot('onion', 'onion')], sowings: [...trial.sowings, ...other], counts: [...trial.counts, ...counts] }; // prettier-ignore
  expect(said(both).split('\n')[1]).toMatchInlineSnapshot(
    `"[above: fiel langsamer] Leek: Bei „Sealed jar“ fiel die Keimung langsamer als bei „Paper packet“. Nach 4 Jahren gingen auf: bei „Paper packet“ 28 von 100 (19 bis 39) und bei „Sealed jar“ 80 von 100 (70 bis 87)."`,
  );
});

test('the numbers for statisticians', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  const result = analyse(trial).results[0]!;
  const rows = (table: { head: readonly string[]; rows: readonly (readonly string[])[] }) => [table.head, ...table.rows].map((row) => row.join(' | ')).join('\n'); // prettier-ignore
  expect(rows(linesTable(words, trial, result, 'leek'))).toMatchInlineSnapshot(`
    "Wert | Paper packet | Sealed jar
    Halbwertszeit | 3,0 Jahre | keine
    Fieller-Grenzen, 95 % (Jahre) | 2,66 bis 3,42 | 
    Probits am Anfang, Kᵢ (Standardfehler) | 1,646 (0,125) | 1,559 (0,129)
    Steigung, Probits je Jahr (Standardfehler) | −0,549 (0,050) | −0,181 (0,051)
    σ, Jahre für einen Rückgang um ein Probit | 1,82 | 5,54
    Überstreuung φ | 0,10 | 0,01
    Freiheitsgrade von φ | 7 | 7
    Verwendetes φ* | 1,00 | 1,00
    Verwendete Freiheitsgrade (ν) | 8 | 8
    Einheiten | 9 | 9"
  `);
  expect(rows(lineTestsTable(words, result, 'leek'))).toMatchInlineSnapshot(`
    "Test | F | Freiheitsgrade | p | p angepasst (Holm)
    Eine Steigung für alle | 26,88 | 1; 12 | unter 0,001 | unter 0,001
    Eine Linie für alle | 33,02 | 2; 12 | unter 0,001 | unter 0,001"
  `);
});
