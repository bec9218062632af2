import { expect, test } from 'vitest';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { inGerman } from '../../support/in-german.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeAnalysis, makeCaveat, makeGroup, makeResult } from '../../support/make-result.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const words = wordsFor('de-AT');
/** No-break spaces, which stand between a number and what it counts, read as ordinary ones. */
const plain = (text: string) => text.replaceAll('\u00A0', ' ');

test.each(['de', 'de-DE', 'de-AT', 'de-CH', 'DE-de'])('%s is German', (tag) => {
  expect(wordsFor(tag).language).toBe('de');
});

test.each([
  [1234.5, undefined, '1234,5'],
  [12345.6, undefined, '12 345,6'],
  [1234567, 0, '1 234 567'],
  [-0.04, 1, '0,0'],
  [-3.25, 1, '−3,3'],
  [0.1 + 0.2, undefined, '0,3'],
  [100, undefined, '100'],
])('number(%d, %s) is %s', (value, digits, text) => {
  expect(plain(words.number(value, digits))).toBe(text);
});

test.each([
  [75.5, '%', 50, '76 %'],
  [75.5, '%', 200, '75,5 %'],
  [5.44, 'days', null, '5,4 Tage'],
  [42.4, 'mm', null, '42 mm'],
  [3.4567, 'g', null, '3,46 g'],
  [0.01234, 'g', null, '0,0123 g'],
  [8.12, '% wet basis', null, '8,1 %'],
  [2, 'years', null, '2 Jahre'],
  [4.24, 'percentage points', null, '4,2 Punkte'],
  [12.14, 'seeds per day per 100 sown', null, '12,1 Samen je Tag von 100 gesäten'],
  [12, '', null, '12,0'],
  [null, 'mm', null, 'nicht bekannt'],
])('quantity(%s, "%s", %s) is %s', (value, unit, seeds, text) => {
  expect(plain(words.quantity(value, unit, seeds))).toBe(text);
});

test('a number keeps its unit on its line', () => {
  expect(words.quantity(42, 'mm')).toBe('42\u00A0mm');
  expect(words.date('2026-04-04')).toBe('4.\u00A0April 2026');
});

test.each(['days', 'years', 'percentage points', 'seeds per day per 100 sown', '% wet basis', '% of mass lost'])(
  'the unit %s has a German name',
  (unit) => {
    expect(words.unitName(unit)).not.toMatch(/day|year|point|seed|wet|mass /);
  },
);

test('signs and authors’ own units stay as they are', () => {
  expect(['mm', 'g', '%', 'Blätter', ''].map((unit) => words.unitName(unit))).toEqual(['mm', 'g', '%', 'Blätter', '']);
});

test('ranges are said in words, never with minus signs', () => {
  expect(words.range(-9.2, 17.4, 'germination', '%')).toBe('9 weniger bis 17 mehr je 100');
  expect(words.range(3.1, 20.8, 'germination', '%')).toBe('3 bis 21 mehr je 100');
  expect(words.range(0.2, 20.8, 'germination', '%')).toBe('unter 1 bis 21 mehr je 100');
  expect(plain(words.range(-2, -0.4, 't50', 'days'))).toBe('0,4 bis 2,0 Tage früher');
  expect(words.range(8.26, 24, 'germination', '%', { column: null, matters: 8 })).toBe(
    'knapp über 8 bis 24 mehr je 100',
  );
  expect(plain(words.range(3.2, 8.4, 'trait', 'mm', { column: 'height', matters: null }))).toBe('3 bis 8 mm höher');
  expect(words.range(null, 3, 't50', 'days')).toBe('nicht bekannt');
});

test('dates, lists and counts', () => {
  expect(plain(words.date('2026-03-14'))).toBe('14. März 2026');
  expect(words.date('2026-04')).toBe('April 2026');
  expect(words.date('Frühjahr')).toBe('Frühjahr');
  expect(words.list(['a'])).toBe('a');
  expect(words.list(['a', 'b', 'c'])).toBe('a, b und c');
  expect(words.counted(1, 'trial')).toBe('1 Versuch');
  expect(words.counted(1200, 'sowing')).toBe('1200 Aussaaten');
  expect(words.counted(3, 'seed')).toBe('3 Samen');
});

test.each([
  ['a 40-cell tray', 'Schale', 'Schalen'],
  ['petri dishes lined with paper', 'Schale', 'Schalen'],
  ['9 cm pots', 'Topf', 'Töpfe'],
  ['glass jar', 'Glas', 'Gläser'],
  ['a row of 2 m', 'Reihe', 'Reihen'],
  ['Ice-cream tub (1 l), lid on', 'Dose', 'Dosen'],
  ['seed tray on a heat mat', 'Schale', 'Schalen'],
  ['eine Schale mit 40 Samen', 'Schale', 'Schalen'],
  ['Petrischalen auf feuchtem Papier', 'Petrischale', 'Petrischalen'],
  ['9-cm-Töpfe', 'Topf', 'Töpfe'],
  ['Multitopfplatte, 77 Zellen', 'Multitopfplatte', 'Multitopfplatten'],
  ['ein Weckglas mit Küchenpapier', 'Weckglas', 'Weckgläser'],
  ['Papierrolle im Beutel', 'Papierrolle', 'Papierrollen'],
  ['Saatkiste', 'Saatkiste', 'Saatkisten'],
  ['Hochbeet', 'Hochbeet', 'Hochbeete'],
  ['in Bechern', 'Becher', 'Becher'],
  ['rockwool cube', 'Aussaat', 'Aussaaten'],
  ['12', 'Aussaat', 'Aussaaten'],
  [null, 'Aussaat', 'Aussaaten'],
])('the container "%s" is called %s', (container, one, many) => {
  const trial = makeTrial({ sowing: { container, assignment: 'random', treated: 'each-sowing', block: null } });
  expect([words.unitWord(trial), words.unitWord(trial, true)]).toEqual([one, many]);
});

test('units of a group', () => {
  const trial = makeTrial({
    sowing: { container: 'Topf', assignment: 'random', treated: 'each-sowing', block: 'Shelf' },
  });
  const units = (parts: Parameters<typeof makeGroup>[1]) => words.units(trial, makeGroup('jar', parts));
  expect(units({ units: 1, unit: 'batch' })).toBe('1 Charge');
  expect(units({ units: 6, unit: 'block' })).toBe('6 Regalbretter');
  expect(units({ units: 2, unit: 'tray' })).toBe('2 Schalen');
  expect(units({ units: 3, unit: 'sowing' })).toBe('3 Töpfe');
});

test('every gender and number of what a sowing is gets its article', () => {
  const unknown = makeCaveat('batch-unknown', { evidence: { treated: 'unknown', treatments: [] } });
  const question = (container: string) => {
    const one = makeTrial({ sowing: { container, assignment: 'by-hand', treated: 'unknown', block: null } });
    return words.caveat(one, makeAnalysis(), unknown).reason;
  };
  expect(['Topf', 'Schale', 'Glas'].map(question)).toEqual([
    'es ist nicht aufgezeichnet, ob das Saatgut für jeden Topf einzeln behandelt wurde',
    'es ist nicht aufgezeichnet, ob das Saatgut für jede Schale einzeln behandelt wurde',
    'es ist nicht aufgezeichnet, ob das Saatgut für jedes Glas einzeln behandelt wurde',
  ]);
});

test('lots are told apart', () => {
  const lots = [
    { ...makeLot('p-1', 'Porree'), cultivar: 'Hilari' },
    { ...makeLot('p-2', 'Porree'), cultivar: 'Hilari' },
    makeLot('kresse', 'kresse', 'Lepidium sativum'),
  ];
  const trial = makeTrial({ lots });
  expect(lots.map(({ id }) => words.lotName(trial, id))).toEqual([
    'Porree ‚Hilari‘ (p-1)',
    'Porree ‚Hilari‘ (p-2)',
    'Kresse',
  ]);
  expect(words.lotName(trial, 'all')).toBe('alle 3 Partien');
});

test('a label that holds quotation marks is quoted within', () => {
  const trial = makeTrial();
  const treatments = trial.treatments.map((each) => ({ ...each, label: 'Glas „Omas Sorte“' }));
  const few = makeCaveat('few-seeds', { treatment: 'jar', evidence: { seeds: 30 } });
  expect(words.caveat({ ...trial, treatments }, makeAnalysis(), few).reason).toBe(
    'es wurden nur 30 Samen bei „Glas ‚Omas Sorte‘“ gesät',
  );
});

test('titles of outcomes and names of comparisons', () => {
  const trial = inGerman(makeTrial());
  const title = (parts: Parameters<typeof makeResult>[0]) => words.outcomeTitle(trial, makeResult(parts));
  expect(title({})).toBe('Aufgegangen bis Tag 14');
  expect(title({ day: null, days: { leek: 14, cress: 6 } })).toBe('Aufgegangen bis Tag 6 oder 14');
  expect(title({ day: null, days: { a: 4, b: 6, c: 8, d: 10 } })).toBe('Aufgegangen');
  expect(title({ measure: 't50', day: null })).toBe('Tag, bis zu dem die Hälfte aufgegangen war');
  const leaf = { measure: 'trait', unit: 'mm', day: 21, days: { leek: 21 } } as const;
  expect(title({ ...leaf, column: 'leaf_length' })).toBe('Blattlänge am Tag 21');
  expect(title({ ...leaf, column: 'länge_des_sprosses' })).toBe('Länge des sprosses am Tag 21');
  const comparison = makeComparison({ estimate: 1 });
  expect(words.comparisonName(trial, comparison)).toBe('Dichtes Glas gegen Papiertüte');
  expect(plain(words.comparisonName(trial, { ...comparison, stored: 0.5 }))).toBe(
    'Dichtes Glas gegen Papiertüte, nach 6 Monaten Lagerung',
  );
  expect(words.comparisonName(trial, { ...comparison, stored: 0 })).toBe('Dichtes Glas gegen Papiertüte, am Anfang');
});

test('a group in one line', () => {
  const trial = inGerman(makeTrial());
  const line = (parts: Parameters<typeof makeGroup>[1], result: Parameters<typeof makeResult>[0] = {}) =>
    plain(words.groupSentence(trial, makeResult(result), makeGroup('jar', parts)));
  expect(line({})).toBe(
    'Dichtes Glas: 76 von 100 (151 von 200 Samen, 4 Schalen; die Daten passen zu allem zwischen 65 und 84)',
  );
  expect(line({ units: 1 })).toBe(
    'Dichtes Glas: 76 von 100 (151 von 200 Samen, 1 Schale; nach dem Zufall der Samen allein passt alles zwischen 65 und 84)',
  );
  expect(line({ estimate: null })).toBe('Dichtes Glas: nicht bekannt (4 Schalen)');
  const interval = { level: 0.95, lower: 38.2, upper: 45.8, method: 'welch' } as const;
  expect(
    line({ count: null, seeds: null, estimate: 42, interval }, { measure: 'trait', unit: 'mm', column: 'height' }),
  ).toBe('Dichtes Glas: 42 mm (Mittelwert von 4 Schalen; die Daten passen zu allem zwischen 38 und 46 mm)');
});

test('p-values', () => {
  expect([0.0004, 0.0312, 0.25, 0.9999, 1].map(words.pValue)).toEqual([
    'unter 0,001',
    '0,031',
    '0,25',
    'über 0,99',
    '1,00',
  ]);
});
