import { expect, test } from 'vitest';
import { linkTerms } from '../../src/report/link-terms.ts';
import type { TermForms } from '../../src/wording/term-forms.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

const forms: TermForms = {
  welch: { exact: 'Welch’s t|Welch' },
  'p-value': { any: 'p-values?', exact: 'p' },
  lot: { any: '(?<!by )lots?' },
  t: { exact: 't' },
};
const linked = (html: string) => linkTerms(html, forms, (id) => `#${id}`);

test('the first use of a term is a link, in either case; later uses stay plain', () => {
  expect(linked('<p>Lots of seed. One lot, p 0.03.</p><p>A lot; p</p>')).toBe(
    '<p><a href="#lot">Lots</a> of seed. One lot, <a href="#p-value">p</a> 0.03.</p><p>A lot; p</p>',
  );
  expect(linked('<p>P, p</p>')).toBe('<p>P, <a href="#p-value">p</a></p>');
});

test('a longer term is not taken apart, even once it is linked', () => {
  expect(linked('<td>Welch’s t<td>Welch’s t; t')).toBe(
    '<td><a href="#welch">Welch’s t</a><td>Welch’s t; <a href="#t">t</a>',
  );
});

test('words that only look like a term stay plain', () => {
  const plain = '<p>by lot, a plot, lots.csv, don’t, don&#39;t, t-shirt, x&lt;y &amp; z, ballots</p>';
  expect(linked(plain)).toBe(plain);
});

test('links, headings, drawings, code, what is pressed, formulas and authors’ words are left alone', () => {
  for (const html of [
    '<a href="/x">lot</a>',
    '<h2><span>lot</span> lot</h2>',
    '<svg><text>p</text></svg>',
    '<details><summary>lot</summary></details>',
    '<ul class="formula plain-list"><li>p = x / n</li></ul>',
    '<div class="prose"><div>lot</div>lot</div>',
    '<!-- lot -->',
    '<div aria-label="a > b: lot"></div>',
  ]) {
    expect(linked(html)).toBe(html);
  }
  expect(linked('<svg><g><text>p</text></g></svg> lot <svg/> t')).toBe(
    '<svg><g><text>p</text></g></svg> <a href="#lot">lot</a> <svg/> <a href="#t">t</a>',
  );
  expect(linked('<div class="prose"><div>lot</div>lot</div><p>lot</p>')).toContain('<p><a href="#lot">lot</a></p>');
});

test('nothing but links is added', () => {
  const html = '<p class="x" data-a="1 > 0">A lot &amp; its p-value: “Welch”</p><img alt="lot"><br/>t';
  expect(linked(html).replace(/<a href="#[a-z-]+">([^<]*)<\/a>/g, '$1')).toBe(html);
});

test.each(['en', 'de'])(
  'every term of the glossary has its forms, and no form a term that is not there: %s',
  (language) => {
    const { glossary, termForms } = wordsFor(language);
    const ids = glossary().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(Object.keys(termForms).sort()).toEqual(ids.sort());
  },
);

test.each(['en', 'de'])('the name of a term, or a part of it, is one of its forms: %s', (language) => {
  const { glossary, termForms } = wordsFor(language);
  const apart = glossary().filter(({ id, term }) => !linkTerms(term, termForms, (found) => found).includes(`"${id}"`));
  expect(apart.map(({ term }) => term)).toEqual([]);
});
