import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readContent } from '../../../src/files/read-content.ts';
import type { CaveatId } from '../../../src/analysis/analysis.ts';
import { englishIn } from '../../support/english-in.ts';
import { everythingSaid } from '../../support/everything-said.ts';
import { inGerman } from '../../support/in-german.ts';
import { EXAMPLES } from '../en/caveat-examples.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import type { UiKey } from '../../../src/wording/words.ts';

const words = wordsFor('de');
const english = wordsFor('en');

test('no English word stands in what is said of any demonstration trial', async () => {
  const { trials } = await readContent(join(import.meta.dirname, '..', '..', '..', 'content'));
  expect(trials.length).toBeGreaterThan(5);
  const found = trials.flatMap(({ id, trial }) =>
    trial === null ? [`${id} has errors`] : everythingSaid(words, inGerman(trial)).flatMap((text) => report(text)),
  );
  expect([...new Set(found)]).toEqual([]);
});

test('no English word stands in labels, methods, glossary, names or guarded phrases', () => {
  const texts = [
    ...Object.values(words.ui),
    ...words
      .allMethods()
      .flatMap(({ title, plain, formula, checkedAgainst }) => [title, ...plain, ...formula, checkedAgainst]),
    ...words
      .glossary()
      .flatMap(({ term, meaning }) => [term.replace(/\((?:relatives|Odds Ratio)[^)]*\)/, ''), meaning]),
    ...words.guarded().flatMap(({ reason, offer }) => [reason, offer.replace(/<[^>]+>/g, '')]),
    ...(Object.keys(EXAMPLES) as CaveatId[]).map((id) => words.caveatName(id)),
  ];
  expect(texts.flatMap((text) => report(text))).toEqual([]);
});

test('a label that reads as in English is one that German has as well', () => {
  const alike = (Object.keys(words.ui) as UiKey[]).filter(
    (key) => words.ui[key] === english.ui[key] && /\p{L}{3}/u.test(words.ui[key].replace(/\{\w+\}/g, '')),
  );
  expect(alike.map((key) => words.ui[key])).toMatchInlineSnapshot(`
    [
      "ORCID",
      "BibTeX",
      "CSL-JSON",
      "Block",
      "Test",
      "Hedges’ g",
      "Plan {digest}",
    ]
  `);
});

test('what German and English call by one name is not what the check above hides', () => {
  expect(englishIn('Die Schalen of each stood on the shelf.')).toEqual(['of', 'each', 'on', 'the']);
});

const report = (text: string): string[] => {
  const found = englishIn(text);
  return found.length === 0 ? [] : [`${found.join(' ')}: ${text}`];
};
