import { expect, test } from 'vitest';
import { makeCaveat } from '../../support/make-result.ts';
import { makeLot } from '../../support/make-trial.ts';
import { tell as tellIn, type Telling } from '../../support/tell.ts';

const tell = (telling: Telling) => tellIn(telling, 'de');

const byHand = makeCaveat('not-randomised', { evidence: { assignment: 'by-hand' } });
const soaked = makeCaveat('unequal-soak', {
  weight: 'serious',
  evidence: {
    treatment: 'jar',
    control: 'packet',
    hours: { treatment: { shortest: 6, longest: 6 }, control: { shortest: 1, longest: 1 } },
  },
});
const many = makeCaveat('many-comparisons', { evidence: { comparisons: 8, p: 0.02, pAdjusted: 0.16 } });
const lowCounts = { jar: { count: 2, seeds: 150 }, packet: { count: 2, seeds: 150 } };

test('beyond what was to matter', () => {
  const more = { estimate: 26, lower: 17.2, upper: 34.6, margin: 10, verdict: 'matters' } as const;
  expect(tell(more)).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf: 88 von 100 gegenüber 62 von 100 (264 von 300 Samen und 186 von 300; 6 und 6 Schalen). Die Daten passen zu allem zwischen 17 und 35 mehr je 100, alles jenseits der Schwelle von 10 je 100, ab der ein Unterschied zählen sollte."`,
  );
  expect(
    tell({
      ...more,
      estimate: -26,
      lower: -34.6,
      upper: -17.2,
      jar: { count: 186, estimate: 62 },
      packet: { count: 264, estimate: 88 },
    }),
  ).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen weniger Samen auf: 62 von 100 gegenüber 88 von 100 (186 von 300 Samen und 264 von 300; 6 und 6 Schalen). Die Daten passen zu allem zwischen 17 und 35 weniger je 100, alles jenseits der Schwelle von 10 je 100, ab der ein Unterschied zählen sollte."`,
  );
  expect(tell({ ...more, fixed: false })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf: 88 von 100 gegenüber 62 von 100 (264 von 300 Samen und 186 von 300; 6 und 6 Schalen). Die Daten passen zu allem zwischen 17 und 35 mehr je 100, alles jenseits der genannten Schwelle von 10 je 100, die allerdings nicht vor dem Zählen festgelegt wurde."`,
  );
  expect(tell({ ...more, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen wahrscheinlich mehr Samen auf: 88 von 100 gegenüber 62 von 100 (264 von 300 Samen und 186 von 300; 6 und 6 Schalen). Die Daten passen zu allem zwischen 17 und 35 mehr je 100, alles jenseits der Schwelle von 10 je 100, ab der ein Unterschied zählen sollte. Wir sagen „wahrscheinlich“, denn die Schalen wurden von Hand aufgestellt, nicht durch Los."`,
  );
  expect(tell({ ...more, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"Die Schalen unterschieden sich: bei „Dichtes Glas“ 26 mehr je 100 (die Daten passen zu allem zwischen 17 und 35 mehr; 6 und 6 Schalen), aber auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h). Was die Ursache war, lässt sich nicht sagen."`,
  );
  expect(
    tell({ ...more, jar: { seeds: 100, count: 88 }, packet: { seeds: 100, count: 62 } }),
    '100 seeds each: the share is the count',
  ).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf: 88 von 100 gegenüber 62 von 100 (6 und 6 Schalen). Die Daten passen zu allem zwischen 17 und 35 mehr je 100, alles jenseits der Schwelle von 10 je 100, ab der ein Unterschied zählen sollte."`,
  );
});

test('a difference that may or may not matter', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  expect(tell(more)).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf (12 mehr je 100; die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen). Offen ist, ob der Unterschied die Schwelle von 10 je 100 erreicht, ab der er zählen sollte."`,
  );
  expect(tell({ ...more, estimate: -12, lower: -20.8, upper: -3.1 })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen weniger Samen auf (12 weniger je 100; die Daten passen zu allem zwischen 3 und 21 weniger; 6 und 6 Schalen). Offen ist, ob der Unterschied die Schwelle von 10 je 100 erreicht, ab der er zählen sollte."`,
  );
  expect(tell({ ...more, fixed: false })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf (12 mehr je 100; die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen). Offen ist, ob der Unterschied die genannte Schwelle von 10 je 100 erreicht; sie wurde nicht vor dem Zählen festgelegt."`,
  );
  expect(tell({ ...more, margin: undefined })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf (12 mehr je 100; die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen). Ein kleinster Unterschied, der zählt, wurde vorher nicht festgelegt."`,
  );
  expect(tell({ ...more, ceiling: 'probably', caveats: [many] })).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen wahrscheinlich mehr Samen auf (12 mehr je 100; die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen). Offen ist, ob der Unterschied die Schwelle von 10 je 100 erreicht, ab der er zählen sollte. Wir sagen „wahrscheinlich“, denn es wurden 8 Vergleiche gemacht, und bei so vielen überrascht ein solcher Abstand durch Zufall nicht."`,
  );
  expect(tell({ ...more, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"Die Schalen unterschieden sich: bei „Dichtes Glas“ 12 mehr je 100 (die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen), aber auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h). Was die Ursache war, lässt sich nicht sagen."`,
  );
  expect(
    tell({
      ...more,
      estimate: 3,
      lower: 1,
      upper: 5,
      comparison: { units: { treatment: 2, control: 2, kind: 'sowing' } },
    }),
    'too few for likeness',
  ).toMatchInlineSnapshot(
    `"Bei „Dichtes Glas“ gingen mehr Samen auf (3 mehr je 100; die Daten passen zu allem zwischen 1 und 5 mehr; 2 und 2 Schalen). Der ganze Bereich ist kleiner als die Schwelle von 10 je 100, aber mit weniger als 3 Schalen je Behandlung nennen wir beide nicht gleich genug."`,
  );
  expect(tell({ ...more, estimate: 3, lower: 1, upper: 5, fixed: false }), 'likeness not agreed').toMatchInlineSnapshot(
    `"Es gab einen kleinen Unterschied (Dichtes Glas: 3 mehr je 100; die Daten passen zu allem zwischen 1 und 5 mehr; 6 und 6 Schalen). Wäre die Schwelle von 10 je 100 vorher vereinbart gewesen, gälte das als zu klein, um zu zählen."`,
  );
});

test('alike for this purpose', () => {
  const same = { estimate: 1, lower: -4.4, upper: 6.3, margin: 10, verdict: 'same' } as const;
  expect(tell(same)).toMatchInlineSnapshot(
    `"Beide Behandlungen waren gleich genug für diesen Zweck: Jeder Unterschied ist kleiner als die Schwelle von 10 je 100 (die Daten passen zu allem zwischen 4 weniger und 6 mehr; 6 und 6 Schalen). Diese Schwelle wurde am 1. April 2026 gesetzt, vor dem Zählen, wie die Beteiligten angeben."`,
  );
  expect(tell({ ...same, upper: 11.2, ninety: [-3.2, 9.7] }), 'the 95 % range reaches beyond').toMatchInlineSnapshot(
    `"Beide Behandlungen waren gleich genug für diesen Zweck: Jeder Unterschied ist kleiner als die Schwelle von 10 je 100 (nach dem Bereich, der über „gleich genug“ entscheidet: 3 weniger bis knapp unter 10 mehr; 6 und 6 Schalen). Diese Schwelle wurde am 1. April 2026 gesetzt, vor dem Zählen, wie die Beteiligten angeben."`,
  );
  expect(tell({ ...same, estimate: 3, lower: 0.8, upper: 5.2 }), 'off zero').toMatchInlineSnapshot(
    `"Es gab einen kleinen Unterschied (Dichtes Glas: 3 mehr je 100; die Daten passen zu allem zwischen 1 und 5 mehr; 6 und 6 Schalen), weniger als die Schwelle von 10 je 100, ab der ein Unterschied zählen sollte."`,
  );
  expect(tell({ ...same, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"Beide Behandlungen waren wahrscheinlich gleich genug für diesen Zweck: Jeder Unterschied ist kleiner als die Schwelle von 10 je 100 (die Daten passen zu allem zwischen 4 weniger und 6 mehr; 6 und 6 Schalen). Diese Schwelle wurde am 1. April 2026 gesetzt, vor dem Zählen, wie die Beteiligten angeben. Wir sagen „wahrscheinlich“, denn die Schalen wurden von Hand aufgestellt, nicht durch Los."`,
  );
  expect(tell({ ...same, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"Ein Unterschied war nicht zu sehen (Dichtes Glas: 1 mehr je 100; die Daten passen zu allem zwischen 4 weniger und 6 mehr; 6 und 6 Schalen), aber auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h); das könnte einen verdecken."`,
  );
  expect(
    tell({ ...same, estimate: 3, lower: 0.8, upper: 5.2, ceiling: 'cause-unclear', caveats: [soaked] }),
    'off zero, cause unclear',
  ).toMatchInlineSnapshot(
    `"Die Schalen unterschieden sich: bei „Dichtes Glas“ 3 mehr je 100 (die Daten passen zu allem zwischen 1 und 5 mehr; 6 und 6 Schalen), aber auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h). Was die Ursache war, lässt sich nicht sagen."`,
  );
  expect(tell({ ...same, verdict: 'unclear', fixed: false }), 'margin not fixed beforehand').toMatchInlineSnapshot(
    `"Ein Unterschied wurde nicht gezeigt (Dichtes Glas: 1 mehr je 100; die Daten passen zu allem zwischen 4 weniger und 6 mehr; 6 und 6 Schalen). Wäre die Schwelle von 10 je 100 vorher vereinbart gewesen, gälte das als gleich genug."`,
  );
  expect(
    tell({ ...same, caveats: [makeCaveat('no-room', { weight: 'note' })], comparison: { ceilingFrom: [] } }),
    'nearly all came up',
  ).toMatchInlineSnapshot(
    `"Beide Behandlungen waren gleich genug für diesen Zweck: Jeder Unterschied ist kleiner als die Schwelle von 10 je 100 (die Daten passen zu allem zwischen 4 weniger und 6 mehr; 6 und 6 Schalen). Diese Schwelle wurde am 1. April 2026 gesetzt, vor dem Zählen, wie die Beteiligten angeben. Bei beiden ging fast alles auf, also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen. Bei älterem Saatgut oder in kälterem Boden könnte sich noch einer zeigen."`,
  );
});

test('a difference could not be shown', () => {
  const unclear = { estimate: 4, lower: -9.2, upper: 17.4, margin: 10 } as const;
  const settle = { wouldSettle: { units: 8, difference: 10 } };
  expect(tell({ ...unclear, comparison: settle })).toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 mehr je 100; 6 und 6 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 9 weniger und 17 mehr je 100. Bei der Streuung von Schale zu Schale in diesem Versuch würden etwa 8 Schalen je Behandlung einen Unterschied von 10 je 100 klären."`,
  );
  expect(tell({ ...unclear, estimate: 0 }), 'level counts').toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (beide lagen gleichauf; 6 und 6 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 9 weniger und 17 mehr je 100."`,
  );
  expect(tell({ ...unclear, estimate: -4, lower: -17.4, upper: 0 }), 'one limit exactly zero').toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 weniger je 100; 6 und 6 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 0 und 17 weniger je 100."`,
  );
  expect(tell({ ...unclear, lower: null, upper: null }), 'no range').toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 mehr je 100; 6 und 6 Schalen). Alle Schalen derselben Behandlung ergaben denselben Wert, also ist ihre gewöhnliche Streuung nicht bekannt."`,
  );
  expect(tell({ ...unclear, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 mehr je 100; 6 und 6 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 9 weniger und 17 mehr je 100. Außerdem gilt: Auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h); das könnte einen Unterschied verdecken oder vortäuschen."`,
  );
  expect(
    tell({ ...unclear, ceiling: 'probably', caveats: [byHand] }),
    'nothing is claimed, so no “probably”',
  ).toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 mehr je 100; 6 und 6 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 9 weniger und 17 mehr je 100."`,
  );
  expect(
    tell({ ...unclear, lower: -4, upper: 6, comparison: { units: { treatment: 2, control: 2, kind: 'sowing' } } }),
    'inside the margin with too few units',
  ).toMatchInlineSnapshot(
    `"Ein Unterschied ließ sich nicht zeigen (Dichtes Glas: 4 mehr je 100; 2 und 2 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 4 weniger und 6 mehr je 100. Der ganze Bereich ist kleiner als die Schwelle von 10 je 100, aber mit weniger als 3 Schalen je Behandlung nennen wir beide nicht gleich genug."`,
  );
  expect(tell({ ...unclear, ...lowCounts, estimate: 0 }), 'hardly any').toMatchInlineSnapshot(
    `"So wenige Samen gingen auf (2 von 150 und 2 von 150; 6 und 6 Schalen), dass nur eines feststeht: Beide keimten schlecht."`,
  );
});

test('one tray of each, or of one', () => {
  const one = {
    estimate: 8,
    lower: -13,
    upper: 28,
    verdict: 'untestable',
    ceiling: 'cause-unclear',
    caveats: [makeCaveat('one-sowing', { weight: 'serious' })],
    jar: { units: 1, count: 22, seeds: 25, estimate: 88 },
    packet: { units: 1, count: 20, seeds: 25, estimate: 80 },
    comparison: { units: { treatment: 1, control: 1, kind: 'sowing' }, repeatWith: { units: 6, difference: 10 } },
  } as const;
  expect(tell(one)).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Bei „Dichtes Glas“ gingen 22 von 25 Samen auf (1 Schale), bei „Papiertüte“ 20 von 25 (1 Schale). Mit einer Schale je Behandlung lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen Schale und Schale trennen. Es ist ein erster Blick, und es lohnt sich, ihn mit 6 Schalen je Behandlung zu wiederholen; das reicht für einen Unterschied von 10 je 100."`,
  );
  expect(tell({ ...one, caveats: [...one.caveats, soaked] })).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Bei „Dichtes Glas“ gingen 22 von 25 Samen auf (1 Schale), bei „Papiertüte“ 20 von 25 (1 Schale). Mit einer Schale je Behandlung lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen Schale und Schale trennen. Außerdem gilt: Auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h). Es ist ein erster Blick, und es lohnt sich, ihn mit 6 Schalen je Behandlung zu wiederholen; das reicht für einen Unterschied von 10 je 100."`,
  );
  expect(
    tell({
      ...one,
      packet: { units: 4, count: 80, seeds: 100, estimate: 80 },
      comparison: { units: { treatment: 1, control: 4, kind: 'sowing' } },
    }),
  ).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Bei „Dichtes Glas“ gingen 22 von 25 Samen auf (1 Schale), bei „Papiertüte“ 80 von 100 (4 Schalen). Mit nur einer Schale bei „Dichtes Glas“ lässt sich die Behandlung nicht vom gewöhnlichen Zufall zwischen Schale und Schale trennen. Es ist ein erster Blick, und es lohnt sich, ihn mit mehreren Schalen je Behandlung zu wiederholen."`,
  );
  expect(
    tell({ ...one, estimate: null, jar: { units: 0, count: null, seeds: null, estimate: null } }),
    'nothing left to count',
  ).toMatchInlineSnapshot(
    `"Das lässt sich nicht sagen. Bei mindestens einer der beiden Behandlungen fehlt die Zahl zum Vergleichen. Es ist ein erster Blick, und es lohnt sich, ihn mit 6 Schalen je Behandlung zu wiederholen; das reicht für einen Unterschied von 10 je 100."`,
  );
});

test('the unit is named as it stood on the bench', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  const units = (treatment: number, control: number, kind: 'sowing' | 'tray' | 'batch' | 'block') => ({
    comparison: { units: { treatment, control, kind } },
  });
  const sowing = { container: 'petri dishes', assignment: 'random', treated: 'each-sowing', block: 'shelf' } as const;
  expect(tell({ ...more, ...units(4, 5, 'sowing'), trial: { sowing } })).toContain('4 und 5 Schalen');
  expect(tell({ ...more, ...units(3, 4, 'batch'), trial: { sowing } })).toContain('3 und 4 Chargen');
  expect(tell({ ...more, ...units(6, 6, 'block'), trial: { sowing } })).toContain('beide in jedem von 6 Regalbrettern');
  expect(
    tell({ ...more, comparison: { lot: 'all', lots: ['leek'], units: { treatment: 5, control: 5, kind: 'block' } } }),
  ).toContain('beide in jeder von 5 Partien');
  expect(tell({ ...more, ...units(3, 3, 'tray'), trial: { sowing: { ...sowing, container: null } } })).toContain(
    '3 und 3 Schalen',
  );
});

test('the lot, and how long it was stored, open the sentence', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  const lots = [makeLot('leek'), makeLot('cress', 'cress', 'Lepidium sativum')];
  expect(tell({ ...more, trial: { lots } })).toMatch(/^Porree: Bei „Dichtes Glas“ gingen mehr Samen auf/);
  expect(tell({ ...more, trial: { lots }, comparison: { lot: 'all', lots: ['leek', 'cress'] } })).toMatchInlineSnapshot(
    `"Zusammen, in diesen 2 Partien: Bei „Dichtes Glas“ gingen mehr Samen auf (12 mehr je 100; die Daten passen zu allem zwischen 3 und 21 mehr; 6 und 6 Schalen). Offen ist, ob der Unterschied die Schwelle von 10 je 100 erreicht, ab der er zählen sollte."`,
  );
  const stored = { stored: 1, interval: null } as const;
  expect(
    tell({
      ...more,
      verdict: 'unclear',
      trial: { status: 'growing' },
      comparison: { stored: 1 },
      jar: { ...stored },
      packet: { ...stored },
    }),
  ).toMatch(/^Bisher, nach 1\u00A0Jahr Lagerung: Ein Unterschied ließ sich nicht zeigen/);
});

test('a long label reads as a name', () => {
  const treatments = [
    { id: 'packet', label: 'Paper packet in the shed', control: true },
    { id: 'jar', label: 'Glas mit Kieselgel im Kühlschrank', control: false },
  ].map((each) => ({ ...each, soakHours: null, handling: null, temperature: null, moisture: null }));
  expect(
    tell({ estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different', trial: { treatments } }),
  ).toMatch(/^Bei „Glas mit Kieselgel im Kühlschrank“ gingen mehr Samen auf/);
});
