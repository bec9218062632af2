import { expect, test } from 'vitest';
import { citation } from '../../src/archive/citation.ts';
import { citationMeta } from '../../src/archive/citation-meta.ts';
import { searchData } from '../../src/archive/search-data.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { makeTrial } from '../support/make-trial.ts';

const hostile = '</script><script>alert(1)</script><!-- "quoted" \u2028 &amp; \\u003c';
const page = {
  description: `${hostile} and enough words to come to the fifty characters that are asked for`,
  language: 'en',
  isArticle: true,
  measured: [hostile],
  sown: '2026-04-04',
  finished: null,
  zip: 'https://example.org/trials/test/data/test.zip',
};
const trial = makeTrial({ title: hostile, question: hostile, doi: '10.5281/zenodo.1' });
const cited = citation(trial, DEFAULT_SITE, 'https://example.org/trials/test/');

test('no label can end the data block, and every one is read back as it was', () => {
  const text = searchData(cited, page);
  expect(text).not.toContain('<');
  const { '@graph': graph } = JSON.parse(text);
  expect(graph[0].name).toBe(hostile);
  expect(graph[1].headline).toBe(hostile);
  expect(graph[0].variableMeasured).toEqual([hostile]);
});

// schema.org names no property as required; the lists are those of Google's guides to structured data for data sets and
// articles, from memory: of a data set `name` and a `description` of 50 to 5000 characters, the others recommended.
test('what a data set and an article need is there', () => {
  const { '@context': context, '@graph': graph } = JSON.parse(searchData(cited, page));
  const [dataset, article] = graph;
  expect(context).toBe('https://schema.org');
  expect(dataset['@type']).toBe('Dataset');
  expect(dataset.description.length).toBeGreaterThanOrEqual(50);
  expect(dataset.description.length).toBeLessThanOrEqual(5000);
  for (const key of ['name', 'description', 'license', 'creator', 'distribution', 'version', 'identifier', 'url']) {
    expect(dataset[key], key).toBeTruthy();
  }
  expect(dataset.distribution[0].contentUrl).toBe(page.zip);
  expect(dataset.temporalCoverage).toBe('2026-04-04/..');
  expect(article['@type']).toBe('ScholarlyArticle');
  for (const key of ['headline', 'author', 'publisher', 'dateModified']) expect(article[key], key).toBeTruthy();
  expect(article.isBasedOn['@id']).toBe(dataset['@id']);
});

test('a trial without results is a data set, and no article', () => {
  const { '@graph': graph } = JSON.parse(searchData(cited, { ...page, isArticle: false, sown: null }));
  expect(graph.map((node: Record<string, unknown>) => node['@type'])).toEqual(['Dataset']);
  expect(graph[0]).not.toHaveProperty('temporalCoverage');
});

test('meta tags name every author and leave out what is not known', () => {
  const authors = ['Mara', 'Jon'].map((name) => ({ id: name, name, affiliation: null, orcid: null, url: null }));
  const known = citationMeta({ ...cited, authors, date: '2026-07-01' }, 'en', 'https://example.org/summary.pdf');
  expect(known.filter(([name]) => name === 'citation_author').map(([, content]) => content)).toEqual(['Mara', 'Jon']);
  expect(known).toContainEqual(['citation_publication_date', '2026/07/01']);
  const bare = citationMeta({ ...cited, date: null, doi: null }, 'en', 'https://example.org/summary.pdf');
  expect(bare.map(([name]) => name)).not.toContain('citation_doi');
  expect(bare.map(([name]) => name)).not.toContain('DC.date');
});
