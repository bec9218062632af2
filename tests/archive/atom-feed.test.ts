import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import { atomFeed, type FeedEntry } from '../../src/archive/atom-feed.ts';
import { feedEntries } from '../../src/archive/feed-entries.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { expectAtom } from '../support/expect-atom.ts';
import { publishedDemo } from '../support/published-demo.ts';

const SITE = {
  title: 'Our <bench> & "garden"',
  language: 'en-GB',
  home: 'https://example.org/garden/',
  self: 'https://example.org/garden/feed.xml',
  rights: 'CC-BY-4.0',
};
const entry = (id: string, date: string, title = id): FeedEntry => ({
  id: `https://example.org/garden/trials/${id}/`,
  title,
  link: `https://example.org/garden/trials/${id}/`,
  date,
  authors: ['Mara Example'],
  summary: 'Asked and found.',
  categories: ['leek'],
});
const demo = (await publishedDemo()).map(({ trial }) => ({ trial, analysis: analyse(trial) }));

test('the newest entry comes first, entries of one day by address, and the feed is as old as its newest entry', () => {
  const feed = atomFeed({ ...SITE, entries: [entry('b', '2026-05-01'), entry('c', '2026-06-01'), entry('a', '2026-05-01')] }); // prettier-ignore
  const parsed = expectAtom(feed);
  expect(parsed.entry.map(({ title }) => title)).toEqual(['c', 'a', 'b']);
  expect(parsed.updated).toBe('2026-06-01T00:00:00Z');
});

test('a feed without entries is a feed', () => {
  expect(expectAtom(atomFeed({ ...SITE, entries: [] })).entry).toEqual([]);
});

test('what a contributor writes stays text; signs that XML forbids are replaced', () => {
  const title = ']]><script>alert(1)</script>&amp;\u0001\uFFFE"\'';
  const feed = atomFeed({ ...SITE, entries: [entry('a', '2026-05-01', title)] });
  expect(XMLValidator.validate(feed)).toBe(true);
  expect(feed).not.toContain('<script');
  const parser = new XMLParser({ trimValues: false });
  expect(parser.parse(feed).feed.entry.title).toBe(']]><script>alert(1)</script>&amp;\uFFFD\uFFFD"\'');
});

test('a trial gives itself, dated by its end, and each change of its report', () => {
  const { trial, analysis } = demo.find((each) => each.trial.id === 'parsley-soaked-a-day') as (typeof demo)[number];
  const changes = [
    { date: '2026-07-01', what: 'A count of day 9 was mistyped', why: 'Two typings differed.' },
    { date: '2026-07-09', what: 'A picture was added', why: null },
  ];
  const entries = feedEntries(wordsFor('en'), { ...trial, changes }, analysis, 'https://example.org/trials/x/');
  expect(entries.map(({ id, date, title, summary }) => ({ id, date, title, summary }))).toMatchInlineSnapshot(`
    [
      {
        "date": "2026-04-25",
        "id": "https://example.org/trials/x/",
        "summary": "Does parsley come up better when the seed is soaked in water for a day before sowing? Soaked seed came up more: 78 of 100 against 62 of 100 (313 of 400 seeds and 248 of 400; 8 and 8 trays). The data fit with just over 8 to 24 more per 100, all beyond the 8 that was to matter.",
        "title": "Parsley seed soaked for a day",
      },
      {
        "date": "2026-07-01",
        "id": "https://example.org/trials/x/#change-1",
        "summary": "A count of day 9 was mistyped. Two typings differed.",
        "title": "Changed: Parsley seed soaked for a day",
      },
      {
        "date": "2026-07-09",
        "id": "https://example.org/trials/x/#change-2",
        "summary": "A picture was added.",
        "title": "Changed: Parsley seed soaked for a day",
      },
    ]
  `);
  expect(new Set(entries.map(({ link }) => link))).toEqual(new Set(['https://example.org/trials/x/']));
});

test('a trial that grows says that nothing is compared yet; one without a date is not in the feed', () => {
  const { trial, analysis } = demo.find((each) => each.trial.id === 'leek-wet-start') as (typeof demo)[number];
  const [only, ...others] = feedEntries(wordsFor('de'), trial, analysis, 'https://example.org/trials/x/');
  expect(others).toEqual([]);
  expect(only?.summary).toMatchInlineSnapshot(
    `"Do fewer leeks come up in an unheated porch when the trays stand in water for the first week? Es wird noch gezählt. Behandlungen werden erst danach verglichen."`,
  );
  expect(feedEntries(wordsFor('en'), { ...trial, sown: null, finished: null, plan: null }, analysis, 'x')).toEqual([]);
});
