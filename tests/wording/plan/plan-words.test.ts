import { expect, test } from 'vitest';
import { designFaults } from '../../../src/analysis/planning/design-faults.ts';
import { planAnswer } from '../../../src/analysis/planning/plan-answer.ts';
import { planDesign, type PlanDesign } from '../../../src/analysis/planning/plan-design.ts';
import { designFault } from '../../../src/wording/plan/design-fault.ts';
import { planAssumption } from '../../../src/wording/plan/plan-assumption.ts';
import { planSentences } from '../../../src/wording/plan/plan-sentences.ts';
import { planTable } from '../../../src/wording/plan/plan-table.ts';
import { planWarning } from '../../../src/wording/plan/plan-warning.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';

const germination = (parts: Partial<PlanDesign> = {}) =>
  planDesign({ measure: 'germination', base: 60, matters: 15, units: 4, ...parts });
const heights = planDesign({ measure: 'trait', base: 40, matters: 6, units: 6 });
const times = planDesign({ measure: 't50', base: 6, matters: 1, units: 4 });
const en = wordsFor('en');
const de = wordsFor('de');

function told(design: PlanDesign, unit = '', words = en, trials = 200): string {
  const answer = planAnswer(design, { trials });
  return [
    ...planSentences(answer, unit, words),
    planAssumption(design, unit, words),
    ...answer.warnings.map((warning) => `! ${planWarning(warning, words)}`),
  ].join('\n');
}

test('germination of one crop', () => {
  expect(told(germination())).toMatchInlineSnapshot(`
    "With 4 trays of 50 seeds for each treatment, a difference of 15 per 100 (45 of 100 come up instead of 60) would be shown in about 45 of 100 such trials.
    The range would reach about 16 per 100 to either side of what was found.
    Were there no difference at all, one would be shown all the same in about 4 of 100 such trials.
    It could then be said in about 26 of 100 that any difference is smaller than 15 per 100.
    By formula, 4 trials in 5 with 8 trays of each would show a difference of 15 per 100.
    The smallest p that shuffling the trays of a crop can reach is 0.029.
    200 such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about 8 of 100.
    Assumed: trays vary 2 times as much as the luck of single seeds would make them (φ = 2, variance). Two trays of 50 seeds treated alike would then differ by up to 28 per 100 in 19 of 20 pairs.
    ! This difference would be missed more often than shown. A trial that shows nothing would then say little: sow more trays, or ask for a larger difference."
  `);
});

test('before the simulation is done, the formula answers and says so', () => {
  expect(told(germination({ units: 12 }), '', en, 0)).toMatchInlineSnapshot(`
    "With 12 trays of 50 seeds for each treatment, a difference of 15 per 100 (45 of 100 come up instead of 60) would be shown in about 94 of 100 such trials.
    The range would reach about 8 per 100 to either side of what was found.
    The smallest p that shuffling the trays of a crop can reach is below 0.001.
    Worked out by formula only; simulation is the better answer.
    Assumed: trays vary 2 times as much as the luck of single seeds would make them (φ = 2, variance). Two trays of 50 seeds treated alike would then differ by up to 28 per 100 in 19 of 20 pairs."
  `);
});

test('two trays of each in several crops', () => {
  expect(told(germination({ units: 2, spread: 1, crops: 4 }))).toMatchInlineSnapshot(`
    "With 2 trays of 50 seeds for each treatment and crop, a difference of 15 per 100 (45 of 100 come up instead of 60) would be shown in any one crop in about 8 of 100 such trials.
    The range would reach about 24 per 100 to either side of what was found.
    Were there no difference in a crop, it would show one all the same in fewer than 1 of 100 such trials.
    Were there no difference in any crop, at least one crop would seem to show one in fewer than 1 of 100 such trials; with the number of crops allowed for, in fewer than 1 of 100.
    All 4 crops taken together would show a difference of 15 per 100, if it is the same in each, in about 96 of 100 such trials, with a range of about 9 per 100 to either side; without any difference they would show one in about 2 of 100.
    By formula, 4 trials in 5 with 5 trays of each would show a difference of 15 per 100.
    The smallest p that shuffling the trays of a crop can reach is 0.33.
    200 such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about 3 of 100.
    Assumed: trays vary no more than the luck of single seeds makes them (φ = 1), which is rare. Two trays of 50 seeds treated alike would then differ by up to 20 per 100 in 19 of 20 pairs.
    ! This difference would be missed more often than shown. A trial that shows nothing would then say little: sow more trays, or ask for a larger difference.
    ! Every crop is one more comparison, and one more chance to be fooled by luck. Say beforehand whether you ask about each crop or about all together.
    ! With fewer than 3 trays of each, two treatments are never called alike, however close they come.
    ! With so few trays even the most extreme result could come from shuffling them: no shuffle reaches 0.05. From 4 trays of each on it can."
  `);
});

test('one tray of each never makes a trial', () => {
  expect(told(germination({ units: 1 }))).toMatchInlineSnapshot(`
    "With one tray of each, such a trial cannot tell: the treatment cannot be told from ordinary tray-to-tray luck, however many seeds are in the tray.
    By formula, 4 trials in 5 with 8 trays of each would show a difference of 15 per 100.
    Assumed: trays vary 2 times as much as the luck of single seeds would make them (φ = 2, variance). Two trays of 50 seeds treated alike would then differ by up to 28 per 100 in 19 of 20 pairs.
    ! One tray of each makes a first look, not a trial. Several small trays tell more than one large one."
  `);
});

test('several crops by formula alone', () => {
  expect(told(germination({ units: 1, crops: 6 }), '', en, 0)).toContain(
    'All 6 crops taken together would show a difference of 15 per 100, if it is the same in each, in about 57 of 100 such trials, with a range of about 14 per 100 to either side.\n',
  );
});

test('one tray of each in several crops', () => {
  expect(told(germination({ units: 1, crops: 6 }))).toMatchInlineSnapshot(`
    "With one tray of each, no crop by itself can tell: the treatment cannot be told from ordinary tray-to-tray luck, however many seeds are in the tray.
    All 6 crops taken together would show a difference of 15 per 100, if it is the same in each, in about 57 of 100 such trials, with a range of about 14 per 100 to either side; without any difference they would show one in about 4 of 100.
    By formula, 4 trials in 5 with 8 trays of each would show a difference of 15 per 100.
    200 such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about 8 of 100.
    Assumed: trays vary 2 times as much as the luck of single seeds would make them (φ = 2, variance). Two trays of 50 seeds treated alike would then differ by up to 28 per 100 in 19 of 20 pairs.
    ! One tray of each makes a first look, not a trial. Several small trays tell more than one large one.
    ! Every crop is one more comparison, and one more chance to be fooled by luck. Say beforehand whether you ask about each crop or about all together."
  `);
});

test('heights and times', () => {
  expect(told(heights, 'mm')).toMatchInlineSnapshot(`
    "With 6 trays for each treatment, a difference of 6 mm (a mean of 46 mm instead of 40 mm) would be shown in about 64 of 100 such trials.
    The range would reach about 5.3 mm to either side of what was found.
    Were there no difference at all, one would be shown all the same in about 5 of 100 such trials.
    It could then be said in about 49 of 100 that any difference is smaller than 6 mm.
    By formula, 4 trials in 5 with 9 trays of each would show a difference of 6 mm.
    The smallest p that shuffling the trays of a crop can reach is 0.002.
    200 such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about 8 of 100.
    Assumed: means of trays treated alike vary with a standard deviation of 4 mm. Plants measured in a tray enter only through it: more of them make tray means steadier.
    ! This difference would be missed more often than 1 time in 5. More trays help more than larger ones."
  `);
  expect(told(times)).toMatchInlineSnapshot(`
    "With 4 trays of 50 seeds for each treatment, a difference of 1 day (half are up by day 5 instead of day 6) would be shown in about 50 of 100 such trials.
    The range would reach about 1.2 days to either side of what was found.
    Were there no difference at all, one would be shown all the same in about 3 of 100 such trials.
    It could then be said in about 23 of 100 that any difference is smaller than 1 day.
    By formula, 4 trials in 5 with 9 trays of each would show a difference of 1 day.
    The smallest p that shuffling the trays of a crop can reach is 0.029.
    200 such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about 8 of 100.
    Assumed: the true time to half varies between trays with a standard deviation of 0.6 days, that of single seeds in a tray with one of 1.5 days; 80 of 100 seeds come up; checks at gaps of 1 day from sowing on.
    ! This difference would be missed more often than shown. A trial that shows nothing would then say little: sow more trays, or ask for a larger difference."
  `);
});

test('in German', () => {
  expect(told(germination({ crops: 3 }), '', de)).toMatchInlineSnapshot(`
    "Mit 4 Schalen zu 50 Samen je Behandlung und Art würde ein Unterschied von 15 je 100 (45 von 100 gehen auf statt 60) bei einer einzelnen Art in etwa 44 von 100 solcher Versuche gezeigt.
    Die Spanne würde vom Befund aus etwa 16 je 100 nach beiden Seiten reichen.
    Gäbe es bei einer Art keinen Unterschied, würde sie in etwa 3 von 100 solcher Versuche trotzdem einen zeigen.
    In etwa 32 von 100 ließe sich dann sagen, dass ein Unterschied kleiner als 15 je 100 ist.
    Gäbe es bei keiner Art einen Unterschied, schiene in etwa 8 von 100 solcher Versuche doch mindestens eine einen zu zeigen; wird die Zahl der Arten berücksichtigt, in etwa 2 von 100.
    Alle 3 Arten zusammengenommen würden einen Unterschied von 15 je 100, falls er bei allen gleich ist, in etwa 94 von 100 solcher Versuche zeigen, mit einer Spanne von etwa 8 je 100 nach beiden Seiten; ohne jeden Unterschied würden sie in etwa 3 von 100 einen zeigen.
    Nach der Formel würden 4 von 5 Versuchen mit 8 Schalen je Behandlung einen Unterschied von 15 je 100 zeigen.
    Das kleinste p, das ein Mischen der Schalen einer Art erreichen kann, ist 0,029.
    200 solche Versuche wurden mit Zufallszahlen simuliert und so ausgewertet, wie es ein Bericht tut; die Anteile stimmen auf etwa 5 von 100.
    Angenommen: Schalen schwanken 2-mal so stark, wie es der Zufall einzelner Samen bewirkt (φ = 2, Varianz). Zwei gleich behandelte Schalen mit 50 Samen unterscheiden sich dann bei 19 von 20 Paaren um bis zu 28 je 100.
    ! Dieser Unterschied würde öfter übersehen als gezeigt. Ein Versuch, der nichts zeigt, würde dann wenig sagen: mehr Schalen säen oder nach einem größeren Unterschied fragen.
    ! Jede Art ist ein Vergleich mehr und eine Gelegenheit mehr, dem Zufall aufzusitzen. Vorher festlegen, ob nach jeder Art oder nach allen zusammen gefragt wird."
  `);
  expect(told(times, '', de)).toMatchInlineSnapshot(`
    "Mit 4 Schalen zu 50 Samen je Behandlung würde ein Unterschied von 1 Tag (die Hälfte ist am Tag 5 da statt am Tag 6) in etwa 50 von 100 solcher Versuche gezeigt.
    Die Spanne würde vom Befund aus etwa 1,2 Tage nach beiden Seiten reichen.
    Gäbe es gar keinen Unterschied, würde in etwa 3 von 100 solcher Versuche trotzdem einer gezeigt.
    In etwa 23 von 100 ließe sich dann sagen, dass ein Unterschied kleiner als 1 Tag ist.
    Nach der Formel würden 4 von 5 Versuchen mit 9 Schalen je Behandlung einen Unterschied von 1 Tag zeigen.
    Das kleinste p, das ein Mischen der Schalen einer Art erreichen kann, ist 0,029.
    200 solche Versuche wurden mit Zufallszahlen simuliert und so ausgewertet, wie es ein Bericht tut; die Anteile stimmen auf etwa 8 von 100.
    Angenommen: Die wahre Zeit bis zur Hälfte schwankt zwischen Schalen mit einer Standardabweichung von 0,6 Tagen, die einzelner Samen einer Schale mit einer von 1,5 Tagen; 80 von 100 Samen gehen auf; gezählt wird von der Saat an im Abstand von 1 Tag.
    ! Dieser Unterschied würde öfter übersehen als gezeigt. Ein Versuch, der nichts zeigt, würde dann wenig sagen: mehr Schalen säen oder nach einem größeren Unterschied fragen."
  `);
});

test('the table has simulation and formula side by side, or the formula alone', () => {
  const table = (trials: number) => {
    const { caption, head, rows } = planTable(planAnswer(germination(), { trials }), '', en);
    return [caption, ...[head, ...rows].map((row) => row.join(' | '))].join('\n');
  };
  expect(table(200)).toMatchInlineSnapshot(`
    "By simulation of 200 trials (± standard error of the simulation) and by formula
    What | Simulated | Formula
    Chance to show the difference | 45.0 ± 3.5 of 100 | 42 of 100
    Chance of a false alarm | 4.0 ± 1.4 of 100 | 5 of 100 by design
    Chance to call it smaller than what matters, where there is none | 25.5 ± 3.1 of 100 | –
    Chance to call it smaller than what matters, though it is that large | 3.5 ± 1.3 of 100 | –
    Range, to either side | 15.8 ± 0.2 per 100 | 17 per 100
    Ranges that hold the truth | 96.0 ± 1.4 of 100 | 95 of 100 by design
    Smallest difference shown 4 times in 5 | – | 23 per 100
    Smallest p that a shuffle can reach | – | 0.029"
  `);
  expect(table(0)).toMatchInlineSnapshot(`
    "By formula
    What | Formula
    Chance to show the difference | 42 of 100
    Chance of a false alarm | 5 of 100 by design
    Range, to either side | 17 per 100
    Ranges that hold the truth | 95 of 100 by design
    Smallest difference shown 4 times in 5 | 23 per 100
    Smallest p that a shuffle can reach | 0.029"
  `);
});

test('what is wrong with a design is said with its remedy', () => {
  const design = germination({ base: 0, seeds: 4, spread: 4, units: 0 });
  expect(designFaults(design).map((fault) => designFault(fault, 'germination', en))).toMatchInlineSnapshot(`
    [
      "How many usually come up must lie between 0 and 100, such as 80; 0 and 100 leave nothing to see.",
      "Trays of each must be a whole number from 1 to 50.",
      "φ must be below the number of seeds in a tray: trays cannot vary more than from nothing to everything. Sow more seeds in each, or take a smaller φ.",
    ]
  `);
});

test('no sentence of a plan has an unfilled brace or a plus or minus where words should be, in either language', () => {
  const designs: [PlanDesign, string][] = [
    [germination({ crops: 3, inBlocks: true }), ''],
    [germination({ base: 97, matters: 50, units: 30, seeds: 10 }), ''],
    [{ ...heights, base: 0.4, matters: 0.05, spread: 0.02, crops: 3 }, 'g'],
    [{ ...times, units: 3, timing: { every: 4, seedSpread: 1, germination: 60 } }, ''],
  ];
  for (const words of [en, de]) {
    for (const [design, unit] of designs) expect(told(design, unit, words, 30)).not.toMatch(/[{}]|NaN|undefined|null/);
  }
});
