import { expect, test } from 'vitest';
import { METHOD_IDS } from '../../../src/wording/method-ids.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import type { UiKey } from '../../../src/wording/words.ts';

const words = wordsFor('de');
const english = wordsFor('en');
const braces = (text: string) => [...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name))].sort();

test('every label of page furniture has a German text', () => {
  expect(Object.keys(words.ui).sort()).toEqual(Object.keys(english.ui).sort());
  for (const [key, text] of Object.entries(words.ui)) {
    expect(text.trim(), key).toBe(text);
    expect(text.length, key).toBeGreaterThan(0);
    expect(text, key).not.toMatch(/undefined|NaN|\bnull\b|Wahrscheinlichkeit|signifikan|% mehr| {2}|"|'|“[^„]*“/);
  }
});

test('a German label asks for nothing that the pages do not give', () => {
  for (const key of Object.keys(words.ui) as UiKey[]) {
    expect(braces(english.ui[key]), key).toEqual(expect.arrayContaining(braces(words.ui[key])));
  }
  expect(words.say('list.shown', { shown: 3, all: 9 })).toBe('3 von 9 gezeigt');
  expect(() => words.say('list.shown', { shown: 3 })).toThrow('say needs "all" for "list.shown"');
});

test('the glossary has the terms of the English one, by alphabet, each with a whole sentence', () => {
  const terms = words.glossary();
  expect(terms.map(({ id }) => id).sort()).toEqual(
    english
      .glossary()
      .map(({ id }) => id)
      .sort(),
  );
  const sorted = terms.map(({ term }) => term).toSorted((a, b) => a.localeCompare(b, 'de'));
  expect(terms.map(({ term }) => term)).toEqual(sorted);
  for (const { term, meaning } of terms) expect(meaning, term).toMatch(/^[\p{Lu}φ].*\.$/u);
});

test('every method is told, with the sources and as many formulas as in English', () => {
  expect(words.allMethods().map(({ id }) => id)).toEqual(METHOD_IDS);
  const shape = (method: ReturnType<typeof words.allMethods>[number]) => [
    method.id,
    method.sources,
    method.formula.length,
    method.plain.length,
  ];
  expect(words.allMethods().map(shape)).toEqual(english.allMethods().map(shape));
});

const caught = (text: string) =>
  words
    .guarded()
    .filter(({ pattern }) => new RegExp(pattern, 'giu').test(text))
    .map(({ id }) => id);

test('the same phrases are guarded as in English', () => {
  expect(words.guarded().map(({ id }) => id)).toEqual(english.guarded().map(({ id }) => id));
  for (const { id, reason, offer } of words.guarded()) {
    expect(reason.length, id).toBeGreaterThan(20);
    expect(offer.length, id).toBeGreaterThan(10);
  }
});

test.each([
  ['Die beiden waren identisch.', ['identical']],
  ['Beide Schalen waren gleich.', ['the-same']],
  ['Sie keimten gleich gut.', ['the-same']],
  ['Das Einweichen hatte keine Wirkung.', ['no-effect']],
  ['Es gab keinen Unterschied.', ['no-difference']],
  ['Das beweist es.', ['proves']],
  ['Einweichen wirkt!', ['works']],
  ['Einweichen funktioniert.', ['works']],
  ['Garantiert keimfähig.', ['guaranteed']],
  ['Ein signifikanter Gewinn.', ['significant']],
  ['Das Glas hatte 2,5 Tage Vorsprung.', ['days-apart']],
  ['100 % gingen auf.', ['hundred-per-cent']],
  ['100\u00A0Prozent gingen auf.', ['hundred-per-cent']],
  ['Ein Trend zu mehr.', ['trend']],
  ['Die Keimung hat sich verdoppelt.', ['doubled']],
  ['Alle standen auf demselben Brett in der gleichen Schale.', []],
  ['Das Saatgut war gleich nach dem Einweichen gesät.', []],
  ['Das beweist nichts.', []],
  ['Die Keimlinge wirkten kräftiger.', []],
  ['Die beiden waren gleich genug für diesen Zweck.', []],
  ['100 % (25 von 25 Samen) gingen auf.', []],
  ['Unterschiede stehen mit ihrem Bereich da.', []],
])('of the phrases to be guarded, "%s" has %j', (text, ids) => {
  expect(caught(text)).toEqual(ids);
});
