import { expect, test } from 'vitest';
import type { Result } from '../../../src/analysis/analysis.ts';
import { makeCaveat } from '../../support/make-result.ts';
import { makeSowing } from '../../support/make-trial.ts';
import { tell as tellIn, type Telling } from '../../support/tell.ts';

const tell = (telling: Telling) => tellIn(telling, 'de');

const byHand = makeCaveat('not-randomised', { evidence: { assignment: 'by-hand' } });
const shelf = makeCaveat('confounded-place', {
  weight: 'serious',
  evidence: {
    treatment: 'jar',
    control: 'packet',
    values: { treatment: ['lower shelf'], control: ['upper shelf'] },
  },
});

const group = (estimate: number, after: number | null = null, by: number | null = null) => ({
  estimate,
  count: null,
  seeds: null,
  bracket: after === null ? null : { after, by },
});
const days: Partial<Result> = { measure: 't50', unit: 'days', day: null };
const t50: Telling = {
  estimate: -1.2,
  lower: -2,
  upper: -0.4,
  margin: 1,
  verdict: 'different',
  jar: group(5.4, 5, 8),
  packet: group(6.6, 5, 8),
  result: days,
};

test('half of them up, with the checks between which the half lies', () => {
  expect(tell(t50)).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage früher (die Daten passen zu allem zwischen 0,4 und 2,0 Tage früher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat früher auf. Offen ist, ob der Unterschied die Schwelle von 1 Tag erreicht, ab der er zählen sollte."`,
  );
  expect(
    tell({ ...t50, estimate: 1.2, lower: 0.4, upper: 2, jar: group(6.6, 5, 8), packet: group(5.4, 5, 8) }),
  ).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage später (die Daten passen zu allem zwischen 0,4 und 2,0 Tage später; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat später auf. Offen ist, ob der Unterschied die Schwelle von 1 Tag erreicht, ab der er zählen sollte."`,
  );
  expect(tell({ ...t50, margin: 0.3, verdict: 'matters' })).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage früher (die Daten passen zu allem zwischen 0,4 und 2,0 Tage früher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat früher auf, und der ganze Bereich liegt jenseits der Schwelle von 0,3 Tagen, ab der ein Unterschied zählen sollte."`,
  );
  expect(tell({ ...t50, upper: 0.6, verdict: 'unclear' })).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage früher (die Daten passen zu allem zwischen 2,0 Tage früher und 0,6 Tage später; 6 und 6 Schalen). Ein Unterschied ließ sich nicht zeigen. Das heißt nicht, dass beide gleich sind."`,
  );
  expect(tell({ ...t50, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage früher (die Daten passen zu allem zwischen 0,4 und 2,0 Tage früher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat wahrscheinlich früher auf. Offen ist, ob der Unterschied die Schwelle von 1 Tag erreicht, ab der er zählen sollte. Wir sagen „wahrscheinlich“, denn die Schalen wurden von Hand aufgestellt, nicht durch Los."`,
  );
  expect(tell({ ...t50, ceiling: 'cause-unclear', caveats: [shelf] })).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 1,2 Tage früher (die Daten passen zu allem zwischen 0,4 und 2,0 Tage früher; 6 und 6 Schalen). Aber die Schalen „Dichtes Glas“ standen nur bei „lower shelf“ und die Schalen „Papiertüte“ nur bei „upper shelf“. Was die Ursache des Unterschieds war, lässt sich nicht sagen."`,
  );
  expect(tell({ ...t50, estimate: 0.1, lower: -0.8, upper: 0.9, verdict: 'same' })).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ bis Tag 5,4 (zwischen den Auszählungen von Tag 5 und Tag 8) aufgegangen, bei „Papiertüte“ bis Tag 6,6 (zwischen den Auszählungen von Tag 5 und Tag 8): 0,1 Tage später (die Daten passen zu allem zwischen 0,8 Tage früher und 0,9 Tage später; 6 und 6 Schalen). Das heißt: Beide Behandlungen waren gleich genug für diesen Zweck. Jeder Unterschied ist kleiner als die Schwelle von 1 Tag. Diese Schwelle wurde am 1. April 2026 gesetzt, vor dem Zählen, wie die Beteiligten angeben."`,
  );
});

test('a difference within blocks that is not that of the means says how it was made', () => {
  const units = { treatment: 3, control: 3, kind: 'block' } as const;
  const result = { measure: 'trait', column: 'height', unit: 'mm' } as const;
  const of = (jar: number) =>
    tell({
      estimate: 3,
      lower: 1,
      upper: 5,
      result,
      comparison: { units },
      jar: { estimate: jar },
      packet: { estimate: 39 },
    });
  expect(of(43).split('.')[0]).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Schalen bei „Dichtes Glas“ im Mittel auf 43 mm, bei „Papiertüte“ auf 39 mm: Block für Block verglichen 3 mm höher (die Daten passen zu allem zwischen 1 und 5 mm höher; beide in jedem von 3 Blöcken)"`,
  );
  expect(of(42).split('.')[0]).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Schalen bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm: 3 mm höher (die Daten passen zu allem zwischen 1 und 5 mm höher; beide in jedem von 3 Blöcken)"`,
  );
});

test('blocks that all have the same difference do not make all trays alike', () => {
  const units = { treatment: 3, control: 3, kind: 'block' } as const;
  const text = tell({ estimate: 3, result: { measure: 'trait', column: 'height', unit: 'mm' }, comparison: { units } });
  expect(text).toContain(
    ' Der Unterschied war in jedem Block gleich groß, also ist nicht bekannt, wie sehr er gewöhnlich schwankt.',
  );
  expect(text).not.toContain('denselben Wert');
});

test('half up at the first check: an earlier first check is the cure', () => {
  const early = makeCaveat('half-before-first-check', {
    outcome: 'germination',
    lot: 'leek',
    treatment: 'packet',
    evidence: { day: 5, portion: 0.5, units: ['packet1'] },
  });
  const text = tell({ ...t50, estimate: null, verdict: 'unclear', lower: null, upper: null, caveats: [early] });
  expect(text).toContain(
    'In mindestens einer Schale war die Hälfte dessen, was aufging, schon bei der ersten Auszählung aufgegangen; wann, ist also nicht bekannt.',
  );
  expect(text).toMatch(/Eine Wiederholung braucht eine frühere erste Auszählung\.$/);
  expect(text).not.toMatch(/zu weit auseinander|mehreren Schalen/);
});

test('what would settle it is more than either side has', () => {
  const settling = (units: number) =>
    tell({ ...t50, upper: 0.6, verdict: 'unclear', comparison: { units: { treatment: 3, control: 8, kind: 'sowing' }, wouldSettle: { units, difference: 1 } } }); // prettier-ignore
  expect(settling(8)).not.toContain('würden etwa');
  expect(settling(9)).toContain('würden etwa 9 Schalen je Behandlung einen Unterschied');
});

test('a single tray of each with next to nothing up: that is the finding', () => {
  const none = { estimate: 0, count: 0, seeds: 25 };
  const text = tell({ estimate: 0, lower: -13, upper: 13, verdict: 'untestable', jar: none, packet: none });
  expect(text).toMatch(/Es gingen so wenige Samen auf, dass nur eines feststeht: Beide keimten schlecht\.$/);
  expect(text).not.toContain('ein erster Blick');
});

test('a mean that lies outside the checks of the pooled half names no checks', () => {
  expect(tell({ ...t50, jar: group(4.8, 5, 8) })).toContain('bis Tag 4,8 aufgegangen, bei');
});

test('checks too far apart: that there is a lag is said, not how long it is', () => {
  const coarse = {
    ...t50,
    jar: group(4.1, 3, 5),
    packet: group(6.6, 5, 8),
    comparison: {
      interval: { level: 0.95, lower: -5, upper: 0, method: 'welch-bracket' },
      welch: { level: 0.95, lower: -3.1, upper: -1.9 },
      bracket: { lower: -5, upper: 0 },
    },
  } as const;
  expect(tell(coarse)).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ ging die Saat früher auf, aber die Auszählungen lagen zu weit auseinander, um zu sagen, um wie viele Tage. Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ zwischen Tag 3 und Tag 5 aufgegangen, bei „Papiertüte“ zwischen Tag 5 und Tag 8 (die Tage der Auszählung allein lassen 0 bis 5 Tage früher zu; 6 und 6 Schalen)."`,
  );
  expect(tell({ ...coarse, result: { ...days, measure: 'spread' } })).not.toContain('um wie viele Tage');
  expect(tell({ ...coarse, result: { ...days, measure: 'mgt' } })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ ging die Saat früher auf, aber die Auszählungen lagen zu weit auseinander, um zu sagen, um wie viele Tage. Was aufging, brauchte bei „Dichtes Glas“ im Mittel 4,1 Tage, bei „Papiertüte“ 6,6 Tage (6 und 6 Schalen)."`,
  );
});

test('one tray of each: what the checks allow, and no more', () => {
  expect(
    tell({
      ...t50,
      lower: null,
      upper: null,
      verdict: 'untestable',
      jar: { ...group(4.1, 3, 5), units: 1 },
      packet: { ...group(6.6, 5, 8), units: 1 },
      comparison: {
        units: { treatment: 1, control: 1, kind: 'sowing' },
        bracket: { lower: -5, upper: 0 },
        repeatWith: { units: 6, difference: 1 },
      },
    }),
  ).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ zwischen Tag 3 und Tag 5 aufgegangen, bei „Papiertüte“ zwischen Tag 5 und Tag 8: 0 bis 5 Tage früher. Die Auszählungen lagen zu weit auseinander, um mehr zu sagen. Mit einer Schale je Behandlung lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen Schale und Schale trennen. Es ist ein erster Blick, und es lohnt sich, ihn mit 6 Schalen je Behandlung zu wiederholen; das reicht für einen Unterschied von 1 Tag."`,
  );
});

test('all trays of a kind alike: the checks only', () => {
  expect(
    tell({ ...t50, lower: null, upper: null, verdict: 'unclear', comparison: { bracket: { lower: -3, upper: 3 } } }),
  ).toMatchInlineSnapshot(
    `"Die Hälfte dessen, was aufging, war bei „Dichtes Glas“ zwischen Tag 5 und Tag 8 aufgegangen, bei „Papiertüte“ zwischen Tag 5 und Tag 8: 3 Tage früher bis 3 Tage später (6 und 6 Schalen). Ein Unterschied ließ sich nicht zeigen. Das heißt nicht, dass beide gleich sind. Alle Schalen derselben Behandlung ergaben denselben Wert, also ist ihre gewöhnliche Streuung nicht bekannt."`,
  );
});

test('mean time, spread and Maguire’s rate have words of their own', () => {
  expect(tell({ ...t50, result: { ...days, measure: 'mgt' } })).toMatchInlineSnapshot(
    `"Was aufging, brauchte bei „Dichtes Glas“ im Mittel 5,4 Tage, bei „Papiertüte“ 6,6 Tage: 1,2 Tage früher (die Daten passen zu allem zwischen 0,4 und 2,0 Tage früher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat früher auf. Offen ist, ob der Unterschied die Schwelle von 1 Tag erreicht, ab der er zählen sollte."`,
  );
  expect(
    tell({ ...t50, result: { ...days, measure: 'spread' }, jar: group(1.7), packet: group(2.9) }),
  ).toMatchInlineSnapshot(
    `"Die mittlere Hälfte der Keimlinge ging bei „Dichtes Glas“ innerhalb von 1,7 Tagen auf, bei „Papiertüte“ innerhalb von 2,9 Tagen: 1,2 Tage kürzer (die Daten passen zu allem zwischen 0,4 und 2,0 Tage kürzer; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ ging die Saat gleichmäßiger auf. Offen ist, ob der Unterschied die Schwelle von 1 Tag erreicht, ab der er zählen sollte."`,
  );
  const rate = { measure: 'maguire', unit: 'seeds per day per 100 sown', day: null } as const;
  expect(
    tell({
      ...t50,
      estimate: 2.3,
      lower: 0.6,
      upper: 4,
      margin: undefined,
      result: rate,
      jar: group(12.1),
      packet: group(9.8),
    }),
  ).toMatchInlineSnapshot(
    `"Die Keimrate nach Maguire, in der die Zahl und das Tempo stecken, war bei „Dichtes Glas“ 12,1 und bei „Papiertüte“ 9,8: 2,3 höher (die Daten passen zu allem zwischen 0,6 und 4,0 höher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ war die Keimrate höher. Ein kleinster Unterschied, der zählt, wurde vorher nicht festgelegt."`,
  );
});

const height: Partial<Result> = {
  measure: 'trait',
  unit: 'mm',
  column: 'height',
  values: ['jar', 'packet'].flatMap((treatment) =>
    [1, 2].map((each) => ({
      lot: 'leek',
      treatment,
      stored: null,
      block: null,
      unit: `${treatment}-${each}`,
      sowings: [`${treatment}-${each}`],
      seeds: null,
      count: null,
      value: 40,
      plants: 65,
    })),
  ),
};
const sowings = ['jar', 'packet'].flatMap((treatment) =>
  [1, 2].map((each) => makeSowing(`${treatment}-${each}`, treatment, { seeds: 75 })),
);
const trait: Telling = {
  estimate: 3,
  lower: -2.3,
  upper: 8.4,
  margin: 5,
  result: height,
  jar: group(42),
  packet: group(39),
  trial: { sowings },
};

test('a trait of plants, with how many could be measured', () => {
  expect(tell(trait)).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm: 3 mm höher (die Daten passen zu allem zwischen 2 mm niedriger und 8 mm höher; 6 und 6 Schalen). Ein Unterschied ließ sich nicht zeigen. Das heißt nicht, dass beide gleich sind. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
  expect(tell({ ...trait, lower: 1.2, upper: 4.8, verdict: 'different' })).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm: 3 mm höher (die Daten passen zu allem zwischen 1 und knapp unter 5 mm höher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ waren die Keimlinge höher. Offen ist, ob der Unterschied die Schwelle von 5 mm erreicht, ab der er zählen sollte. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
  expect(
    tell({ ...trait, estimate: -8, lower: -10.2, upper: -5.8, verdict: 'matters', jar: group(31) }),
  ).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 31 mm, bei „Papiertüte“ auf 39 mm: 8 mm niedriger (die Daten passen zu allem zwischen 6 und 10 mm niedriger; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ waren die Keimlinge niedriger, und der ganze Bereich liegt jenseits der Schwelle von 5 mm, ab der ein Unterschied zählen sollte. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
  expect(tell({ ...trait, lower: 1.2, upper: 4.8, verdict: 'same' })).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm: 3 mm höher (die Daten passen zu allem zwischen 1 und knapp unter 5 mm höher; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ waren die Keimlinge höher, aber um weniger als die Schwelle von 5 mm, ab der ein Unterschied zählen sollte. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
  expect(
    tell({ ...trait, lower: -1.2, upper: 4.8, verdict: 'same', ceiling: 'cause-unclear', caveats: [shelf] }),
  ).toMatchInlineSnapshot(
    `"Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm: 3 mm höher (die Daten passen zu allem zwischen 1 mm niedriger und knapp unter 5 mm höher; 6 und 6 Schalen). Ein Unterschied war nicht zu sehen, aber die Schalen „Dichtes Glas“ standen nur bei „lower shelf“ und die Schalen „Papiertüte“ nur bei „upper shelf“; das könnte einen verdecken. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
  expect(
    tell({ ...trait, verdict: 'untestable', comparison: { units: { treatment: 1, control: 1, kind: 'sowing' } } }),
  ).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Am Tag 14 kamen die Keimlinge bei „Dichtes Glas“ im Mittel auf 42 mm, bei „Papiertüte“ auf 39 mm. Mit einer Schale je Behandlung lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen Schale und Schale trennen. Es ist ein erster Blick, und es lohnt sich, ihn mit mehreren Schalen je Behandlung zu wiederholen. Nur was aufging, konnte gemessen werden (130 aus 150 Samen; 130 aus 150)."`,
  );
});

test.each([
  ['height', 'mm', 'höher'],
  ['root length', 'mm', 'länger'],
  ['fresh mass', 'g', 'schwerer'],
  ['stem diameter', 'mm', 'breiter'],
  ['leaves', '', 'mehr'],
  ['Wuchshöhe', 'mm', 'höher'],
  ['Blattzahl', '', 'mehr'],
  ['Wurzellänge', 'mm', 'länger'],
  ['vigour', '', 'größer'],
  ['cover', '%', 'größer'],
])('a difference of %s in "%s" is %s', (column, unit, word) => {
  const sentence = tell({
    ...trait,
    result: { ...height, column, unit },
    lower: 1.2,
    upper: 4.8,
    verdict: 'different',
  });
  expect(sentence).toContain(word);
  expect(sentence).not.toMatch(/% (mehr|größer)/);
});

test('grams get as many digits as their range bears', () => {
  const mass = { ...height, column: 'mass', unit: 'g' };
  expect(
    tell({
      ...trait,
      result: mass,
      estimate: 0.312,
      lower: 0.108,
      upper: 0.516,
      margin: undefined,
      jar: group(2.412),
      packet: group(2.1),
    }),
  ).toContain(
    'im Mittel auf 2,41\u00A0g, bei „Papiertüte“ auf 2,10\u00A0g: 0,31\u00A0g schwerer (die Daten passen zu allem zwischen 0,11 und 0,52\u00A0g schwerer; ',
  );
});

test('more water lost is drier, not moister', () => {
  const lost: Telling = {
    estimate: 4.7,
    lower: 4.1,
    upper: 5.3,
    verdict: 'different',
    jar: group(4.9),
    packet: group(0.2),
  };
  const moisture = (unit: string) => tell({ ...lost, result: { measure: 'moisture', unit, day: null } });
  expect(moisture('% of mass lost')).toMatchInlineSnapshot(
    `"Das Saatgut verlor bei „Dichtes Glas“ 4,9 % seiner Masse, bei „Papiertüte“ 0,2 %: 4,7 Punkte mehr (die Daten passen zu allem zwischen 4,1 und 5,3 Punkte mehr; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ verlor das Saatgut mehr Wasser. Ein kleinster Unterschied, der zählt, wurde vorher nicht festgelegt."`,
  );
  expect(moisture('% wet basis')).toMatchInlineSnapshot(
    `"Der Feuchtegehalt war bei „Dichtes Glas“ 4,9 % und bei „Papiertüte“ 0,2 %: 4,7 Punkte mehr (die Daten passen zu allem zwischen 4,1 und 5,3 Punkte mehr; 6 und 6 Schalen). Das heißt: Bei „Dichtes Glas“ war das Saatgut feuchter. Ein kleinster Unterschied, der zählt, wurde vorher nicht festgelegt."`,
  );
});
