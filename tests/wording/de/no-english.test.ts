import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readContent } from '../../../src/files/read-content.ts';
import type { CaveatId } from '../../../src/analysis/analysis.ts';
import { everythingSaid } from '../../support/everything-said.ts';
import { inGerman } from '../../support/in-german.ts';
import { EXAMPLES } from '../en/caveat-examples.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import type { UiKey } from '../../../src/wording/words.ts';

const words = wordsFor('de');
const english = wordsFor('en');

/** Words that English sentences of ours are made of and that German does not have. */
const ENGLISH = new Set(
  `the of and to for with without that this those these is are were been being be has have had having by from not but or
  on at it its as which when where who whose what why how there here than then they their them could would should can
  cannot may might must only each every both either neither one two three four five more most less fewer same other
  another between before after during day days week weeks month months year years seed seeds seedling seedlings tray
  trays dish dishes pot pots jar jars row rows sheet came come up down out off over under above below about into onto
  because whether if nobody nothing something anything everything everyone differ differs differed different difference
  differences larger smaller higher lower earlier later taller shorter longer heavier lighter known recorded measured
  counted sown placed told said shown given taken made found set kept left right mean means range ranges sowing lot lots
  treatment control unit units count counts check checks trial trials grower growers finding findings
  result results method methods people question questions source sources words page pages file files
  chance luck likely probably alike cause unclear smallest largest matter matters beforehand afterwards again also
  always never often once yes no none we our you your i he she do does did done will`
    .split(/\s+/)
    .filter((word) => /^[a-z]+$/.test(word)),
);

/** German has these as well, or they are names, symbols and file names. */
const SHARED = ['in', 'an', 'was', 'so', 'will', 'man', 'die', 'am', 'bei', 'all', 'log', 'set', 'mean', 'i', 'also'];
for (const word of SHARED) ENGLISH.delete(word);

/** Text without addresses, paths, file names, R calls, field names in quotation marks, and braces to be filled. */
const prose = (text: string): string =>
  text
    .replace(/https?:\S+/g, ' ')
    .replace(/\S+\/\S+/g, ' ')
    .replace(/\b[\w-]+\.(?:csv|json|yaml|mdx?|pdf)\b/g, ' ')
    .replace(/[\w.]+\([^)]*\)/g, ' ')
    .replace(/\{\w+\}/g, ' ')
    .replace(/„(?:npm run check|status: \w+|\w+)“/g, ' ');

const englishIn = (text: string): string[] =>
  (
    prose(text)
      .toLowerCase()
      .match(/\p{L}+/gu) ?? []
  ).filter((word) => ENGLISH.has(word));

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
      "Text",
      "BibTeX",
      "DOI",
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
