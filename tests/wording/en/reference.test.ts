import { expect, test } from 'vitest';
import type { UiKey } from '../../../src/wording/words.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';

const words = wordsFor('en');

test('every label of page furniture has a text', () => {
  for (const [key, text] of Object.entries(words.ui)) {
    expect(text.trim(), key).toBe(text);
    expect(text.length, key).toBeGreaterThan(0);
    expect(text, key).not.toMatch(/undefined|NaN|\bnull\b|95 % chance|% more| {2}|"|'/);
  }
});

test('labels are filled, and a missing value is an error', () => {
  expect(words.say('list.shown', { shown: 3, all: 9 })).toBe('3 of 9 shown');
  expect(() => words.say('list.shown', { shown: 3 })).toThrow('say needs "all" for "list.shown"');
  const filled = (Object.keys(words.ui) as UiKey[]).map((key) => {
    const names = [...words.ui[key].matchAll(/\{(\w+)\}/g)].map(([, name = '']) => [name, 'x']);
    return words.say(key, Object.fromEntries(names));
  });
  expect(filled.filter((text) => /[{}]/.test(text))).toEqual([]);
});

test('the glossary has each term once, by alphabet, with a whole sentence', () => {
  const terms = words.glossary();
  expect(new Set(terms.map(({ id }) => id)).size).toBe(terms.length);
  expect(terms.map(({ term }) => term.toLowerCase())).toEqual(terms.map(({ term }) => term.toLowerCase()).toSorted());
  for (const { term, meaning } of terms) expect(meaning, term).toMatch(/^[\p{Lu}φ].*\.$/u);
});

const caught = (text: string) =>
  words
    .guarded()
    .filter(({ pattern }) => new RegExp(pattern, 'iu').test(text))
    .map(({ id }) => id);

test.each([
  ['The two were identical.', ['identical']],
  ['Germination was about the same in both.', ['the-same']],
  ['They came up the same.', ['the-same']],
  ['Soaking had no effect.', ['no-effect']],
  ['There was no difference.', ['no-difference']],
  ['This proves it.', ['proves']],
  ['Soaking works!', ['works']],
  ['Guaranteed to come up.', ['guaranteed']],
  ['A significant gain.', ['significant']],
  ['The jar was 2.5 days ahead.', ['days-apart']],
  ['100 % came up.', ['hundred-per-cent']],
  ['A trend towards more.', ['trend']],
  ['Germination doubled.', ['doubled']],
  ['All stood on the same shelf in the same tray.', []],
  ['The same seed was used, and I worked on it at night.', []],
  ['100 % (25 of 25 seeds) came up.', []],
  ['Differences were shown with their ranges.', []],
])('of the phrases to be guarded, "%s" has %j', (text, ids) => {
  expect(caught(text)).toEqual(ids);
});

test('each guarded phrase says why and offers something else', () => {
  for (const { id, reason, offer } of words.guarded()) {
    expect(reason.length, id).toBeGreaterThan(20);
    expect(offer.length, id).toBeGreaterThan(10);
  }
});

test('a language that is not there falls back to English, which says so', () => {
  expect(wordsFor('xx-YY').language).toBe('en-GB');
  expect(wordsFor('EN').language).toBe('en-GB');
});
