import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { citation } from '../../src/archive/citation.ts';
import { citationBib } from '../../src/archive/citation-bib.ts';
import { citationCff } from '../../src/archive/citation-cff.ts';
import { citationCsl } from '../../src/archive/citation-csl.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { makeTrial } from '../support/make-trial.ts';
import { publishedDemo } from '../support/published-demo.ts';

const person = { id: 'mara', name: 'Mara {Holt} & Søn', affiliation: null, orcid: '0000-0002-1825-0097', url: null };
const trial = makeTrial({
  title: 'Jar: 50 % drier?',
  authors: [person, { ...person, id: 'li', name: 'Li', orcid: null, url: 'https://li.example' }],
  doi: '10.5281/zenodo.123',
  changes: [{ date: '2026-07-01', what: 'one count mended', why: null }],
});
const cited = citation(trial, DEFAULT_SITE, 'https://example.org/trials/test/');

test('the same facts in all three forms', () => {
  expect(citationCff(cited)).toMatchInlineSnapshot(`
    "cff-version: 1.2.0
    message: If you use these data, please cite them as below.
    type: dataset
    title: "Jar: 50 % drier?"
    abstract: Does the jar keep seed better?
    authors:
      - name: Mara {Holt} & Søn
        orcid: https://orcid.org/0000-0002-1825-0097
      - name: Li
        website: https://li.example
    date-released: 2026-07-01
    version: "2"
    doi: 10.5281/zenodo.123
    url: https://example.org/trials/test/
    license: CC-BY-4.0
    keywords:
      - leek
      - Allium porrum
    "
  `);
  expect(citationBib(cited)).toMatchInlineSnapshot(`
    "@misc{test,
    	author = {{Mara \\{Holt\\} \\& Søn} and {Li}},
    	doi = {10.5281/zenodo.123},
    	year = {2026},
    	note = {Data set, version 2},
    	publisher = {Seed trials},
    	title = {Jar: 50 \\% drier?},
    	url = {https://example.org/trials/test/},
    }
    "
  `);
  expect(citationCsl(cited)).toMatchInlineSnapshot(`
    "[
      {
        "id": "test",
        "type": "dataset",
        "title": "Jar: 50 % drier?",
        "author": [
          {
            "literal": "Mara {Holt} & Søn"
          },
          {
            "literal": "Li"
          }
        ],
        "issued": {
          "date-parts": [
            [
              2026,
              7,
              1
            ]
          ]
        },
        "publisher": "Seed trials",
        "version": "2",
        "DOI": "10.5281/zenodo.123",
        "URL": "https://example.org/trials/test/",
        "abstract": "Does the jar keep seed better?"
      }
    ]
    "
  `);
});

test('the date is that of the last change, else of the end, else of the sowing', () => {
  const dateOf = (parts: Parameters<typeof makeTrial>[0]) => citation(makeTrial(parts), DEFAULT_SITE, '').date;
  expect(dateOf({ finished: '2026-05-01', changes: trial.changes })).toBe('2026-07-01');
  expect(dateOf({ finished: '2026-05-01' })).toBe('2026-05-01');
  expect(dateOf({})).toBe('2026-04-04');
  expect(dateOf({ sown: null })).toBeNull();
});

// Guide to Citation File Format schema version 1.2.0 (schema-guide.md of citation-file-format/citation-file-format at 1.2.0;
// its list of required keys read, the patterns of the others from memory).
test('CITATION.cff of every demonstration trial has what its format requires', async () => {
  for (const { text } of await publishedDemo()) {
    const cff = parse(text('CITATION.cff'));
    expect(cff['cff-version']).toBe('1.2.0');
    expect(cff.message && cff.title).toBeTruthy();
    expect(cff.authors.length).toBeGreaterThan(0);
    for (const { name } of cff.authors) expect(name).toBeTruthy();
    expect(cff.type).toBe('dataset');
    expect(cff.url).toMatch(/^https?:\/\//);
    expect(cff['date-released'] ?? '2026-01-01').toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(new Set(cff.keywords).size).toBe(cff.keywords.length);
  }
});
