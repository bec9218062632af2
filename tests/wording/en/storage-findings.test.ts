import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { linesTable, lineTestsTable } from '../../../src/wording/tables/lines-table.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeLot, makeTreatment } from '../../support/make-trial.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const words = wordsFor('en');
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
    [above: fell more slowly] Germination of Sealed jar seed fell more slowly than that of Paper packet seed. After 4 years came up: Paper packet seed 28 of 100 (19 to 39) and Sealed jar seed 80 of 100 (70 to 87).
    By the line through the tests, half of the Paper packet seed still came up after 3.0 years of storage (the data fit with 2.7 to 3.4 years; 6 batches at 3 tests after the start).
    By the line through the tests, Sealed jar seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    "
  `);
});

test('a doubt is named, a cause that cannot be told is not claimed', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  expect(said({ ...trial, sowing: { ...trial.sowing, assignment: 'by-hand' } })).toMatchInlineSnapshot(`
    "
    [above: probably fell more slowly] Germination of Sealed jar seed probably fell more slowly than that of Paper packet seed. We say “probably” because the trays were placed by hand, not by lot. After 4 years came up: Paper packet seed 28 of 100 (19 to 39) and Sealed jar seed 80 of 100 (70 to 87).
    By the line through the tests, half of the Paper packet seed still came up after 3.0 years of storage (the data fit with 2.7 to 3.4 years; 6 batches at 3 tests after the start).
    By the line through the tests, Sealed jar seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    "
  `);
  const place = trial.sowings.map((sowing) => ({ ...sowing, position: sowing.treatment === 'jar' ? 'left' : 'right' }));
  expect(said({ ...trial, sowings: place })).toMatchInlineSnapshot(`
    "
    [question: cause unclear] Germination of the kinds fell at different speed, but the Sealed jar trays stood only at “left” and the Paper packet trays only at “right”. What caused it cannot be told. After 4 years came up: Paper packet seed 28 of 100 (19 to 39) and Sealed jar seed 80 of 100 (70 to 87).
    By the line through the tests, half of the Paper packet seed still came up after 3.0 years of storage (the data fit with 2.7 to 3.4 years; 6 batches at 3 tests after the start).
    By the line through the tests, Sealed jar seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    "
  `);
});

test('the control keeps longer; the series goes on', () => {
  expect(said(storageTrial({ start, packet: slow, jar: fast }, { status: 'growing' }))).toMatchInlineSnapshot(`
    "
    [below: fell faster] So far, germination of Paper packet seed fell more slowly than that of Sealed jar seed. After 4 years came up: Paper packet seed 80 of 100 (70 to 87) and Sealed jar seed 28 of 100 (19 to 39).
    By the line through the tests, Paper packet seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    By the line through the tests, half of the Sealed jar seed still came up after 3.0 years of storage (the data fit with 2.7 to 3.4 years; 6 batches at 3 tests after the start).
    "
  `);
});

test('no difference could be shown', () => {
  expect(said(storageTrial({ start, packet: slow, jar: alike({ 1: 46, 2: 43, 4: 41 }) }))).toMatchInlineSnapshot(`
    "
    [open: not settled] That one kind keeps longer than another could not be shown; that is not proof that they keep alike. After 4 years came up: Paper packet seed 80 of 100 (70 to 87) and Sealed jar seed 82 of 100 (72 to 89).
    By the line through the tests, Paper packet seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    By the line through the tests, Sealed jar seed has not yet fallen to half (94 of 100 at the start, 82 of 100 after 4 years). No half-life is given, for no forecast is made.
    "
  `);
});

test('lines apart, of one slope', () => {
  const [packet, jar] = [alike({ 0: 48, 1: 46, 2: 43, 4: 35 }), alike({ 0: 42, 1: 38, 2: 32, 4: 21 })];
  expect(said(storageTrial({ packet, jar }))).toMatchInlineSnapshot(`
    "
    [open: apart, speed not settled] Germination of the kinds does not run along one line. That one falls faster than another could not be shown. After 4 years came up: Paper packet seed 70 of 100 (59 to 79) and Sealed jar seed 42 of 100 (31 to 53).
    By the line through the tests, Paper packet seed has not yet fallen to half (96 of 100 at the start, 70 of 100 after 4 years). No half-life is given, for no forecast is made.
    By the line through the tests, half of the Sealed jar seed still came up after 3.3 years of storage (the data fit with 2.7 years to some time after the last test; 6 batches at 3 tests after the start).
    "
  `);
});

test('one jar of a kind at a test cannot tell', () => {
  const one = { 1: [[44, 50]], 2: [[36, 50]], 4: [[14, 50]] } as const; // prettier-ignore
  expect(said(storageTrial({ start, packet: one, jar: slow }))).toMatchInlineSnapshot(`
    "
    [question: cannot tell] It cannot be told which seed keeps longer. Not every kind had two jars or packets, known to be stored apart, at each test, so the way of keeping cannot be told from the luck of one jar. After 4 years came up: Paper packet seed 28 of 100 (17 to 42) and Sealed jar seed 80 of 100 (69 to 88). A first look, worth repeating with two or more of each at every test.
    By the line through the tests, half of the Paper packet seed still came up after 3.0 years of storage (the data fit with 2.5 to 3.7 years; 3 batches at 3 tests after the start). With one batch at a test, this is a first look.
    By the line through the tests, Sealed jar seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    "
  `);
});

test('three kinds', () => {
  const treatments = [makeTreatment('a', { label: 'A', control: true }), makeTreatment('b', { label: 'B' }), makeTreatment('c', { label: 'C' })]; // prettier-ignore
  expect(said(storageTrial({ start, a: fast, b: slow, c: slow }, { treatments }))).toMatchInlineSnapshot(`
    "
    [open: unlike in speed] Germination of the kinds did not all fall at the same speed. After 4 years came up: A seed 28 of 100 (19 to 39), B seed 80 of 100 (70 to 87) and C seed 80 of 100 (70 to 87).
    By the line through the tests, half of the A seed still came up after 3.0 years of storage (the data fit with 2.7 to 3.4 years; 6 batches at 3 tests after the start).
    By the line through the tests, B seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
    By the line through the tests, C seed has not yet fallen to half (94 of 100 at the start, 80 of 100 after 4 years). No half-life is given, for no forecast is made.
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
    Jar seed: 90 of 100 at the start, 20 of 100 after 5 years. Too few test dates for a line (2 test dates; it needs three).

    Jar seed fell too steeply to place (100 of 100 at the start, 0 of 100 after 2 years): at all tests but one, all of it or none of it came up, so when it was at half is not known.

    Jar seed has hardly fallen (100 of 100 at the start, 96 of 100 after 2 years): at all tests but one, all of it came up, which is too little to place a line.

    Jar seed shows no fall (80 of 100 at the start, 88 of 100 after 2 years). That is no proof that it keeps.

    No Jar seed came up at any test, so how long it keeps cannot be told.

    By the line through the tests, Jar seed was below half at the first test already (40 of 100 after 1 year, 10 of 100 after 3 years), so when it was at half is not known.
    "
  `);
  const unbounded = { 0: 30, 1: 18, 2: 29, 3: 24 };
  expect(said(storageTrial({ jar: alike(unbounded, 1) }, only))).toMatchInlineSnapshot(`
    "
    Jar seed came down to about half (60 of 100 at the start, 48 of 100 after 3 years), but the tests scatter so much that the fall is not told from none. No half-life is given.
    "
  `);
});

test('a range that reaches beyond the tests is not given a number there; weeks are said in days', () => {
  const only = { treatments: [makeTreatment('jar', { label: 'Jar', control: true })] };
  expect(said(storageTrial({ jar: alike({ 0: 46, 1: 42, 2: 33, 3: 24 }, 1) }, only))).toMatchInlineSnapshot(`
    "
    By the line through the tests, half of the Jar seed still came up after 2.9 years of storage (the data fit with 2.2 years to some time after the last test; 3 batches at 3 tests after the start). With one batch at a test, this is a first look.
    "
  `);
  const days = Object.fromEntries(Object.entries({ 0: 48, 10: 44, 20: 30, 40: 6 }).map(([day, count]) => [Number(day) / 365.25, [[count, 50] as const]])); // prettier-ignore
  expect(said(storageTrial({ jar: days }, only))).toMatchInlineSnapshot(`
    "
    By the line through the tests, half of the Jar seed still came up after 24 days of storage (the data fit with 19 to 30 days; 3 batches at 3 tests after the start). With one batch at a test, this is a first look.
    "
  `);
});

test('two lots are told one by one', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  const other = trial.sowings.map((sowing) => ({ ...sowing, id: `o-${sowing.id}`, lot: 'onion', batch: sowing.batch && `o-${sowing.batch}` })); // prettier-ignore
  const counts = trial.counts.map((count) => ({ ...count, sowing: `o-${count.sowing}` }));
  const both = { ...trial, lots: [...trial.lots, makeLot('onion', 'onion')], sowings: [...trial.sowings, ...other], counts: [...trial.counts, ...counts] }; // prettier-ignore
  expect(said(both).split('\n')[1]).toMatchInlineSnapshot(
    `"[above: fell more slowly] Leek: germination of Sealed jar seed fell more slowly than that of Paper packet seed. After 4 years came up: Paper packet seed 28 of 100 (19 to 39) and Sealed jar seed 80 of 100 (70 to 87)."`,
  );
});

test('the numbers for statisticians', () => {
  const trial = storageTrial({ start, packet: fast, jar: slow });
  const result = analyse(trial).results[0]!;
  const rows = (table: { head: readonly string[]; rows: readonly (readonly string[])[] }) => [table.head, ...table.rows].map((row) => row.join(' | ')).join('\n'); // prettier-ignore
  expect(rows(linesTable(words, trial, result, 'leek'))).toMatchInlineSnapshot(`
    "Value | Paper packet | Sealed jar
    Half-life | 3.0 years | none
    Fieller limits, 95 % (years) | 2.66 to 3.42 | 
    Probits at the start, Kᵢ (standard error) | 1.646 (0.125) | 1.559 (0.129)
    Slope, probits a year (standard error) | −0.549 (0.050) | −0.181 (0.051)
    σ, years for a fall of one probit | 1.82 | 5.54
    Dispersion φ | 0.10 | 0.01
    df of φ | 7 | 7
    φ* used | 1.00 | 1.00
    df used (ν) | 8 | 8
    Units | 9 | 9"
  `);
  expect(rows(lineTestsTable(words, result, 'leek'))).toMatchInlineSnapshot(`
    "Test | F | df | p | p adjusted (Holm)
    One slope for all | 26.88 | 1; 12 | below 0.001 | below 0.001
    One line for all | 33.02 | 2; 12 | below 0.001 | below 0.001"
  `);
});
