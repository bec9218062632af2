import { expect, test } from 'vitest';
import { readPublishable } from '../../../src/files/read-publishable.ts';
import { bookletsOf } from '../../../src/print/digest/booklets-of.ts';
import { digestPdf } from '../../../src/print/digest/digest-pdf.ts';
import { seasonOf } from '../../../src/print/digest/season-of.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeTrial } from '../../support/make-trial.ts';
import { plain, readPdf } from '../../support/read-pdf.ts';

const { site, trials } = await readPublishable('content');
const words = wordsFor(site.language);
const season = trials
  .filter((trial) => seasonOf(trial) === '2026')
  .map((trial) => {
    const address = `${site.base}/trials/${trial.id}/`;
    return { trial, analysis: publishedAnalysis(trial, words), site, words, address };
  });
const WHOLE = { year: '2026', part: 1, parts: 1 };
const booklet = digestPdf(WHOLE, season, site, words);
const pdf = await readPdf(booklet.bytes);
const pressed = (text: string) => plain(text).replaceAll(' ', '');

test('a booklet lists its trials with their pages, then gives each a box', () => {
  expect(pdf.pages[0]).toContain(`${season.length} trials.`);
  for (const { trial, address } of season) {
    const page = pdf.pages.findIndex((text, index) => index > 0 && text.includes(trial.title)) + 1;
    expect(page).toBeGreaterThan(1);
    expect(pressed(pdf.pages[0] ?? '')).toMatch(
      new RegExp(`${pressed(trial.title).replace(/[().?]/g, '.')}\\.*${page}`),
    );
    expect(pdf.alternatives).toContain(`QR code of the address ${address}`);
  }
});

test('each box has the first findings in the words of the page', () => {
  for (const { trial, analysis } of season) {
    for (const { sentence } of words.inShort(trial, analysis).slice(0, 3)) {
      expect(pressed(pdf.text)).toContain(pressed(sentence));
    }
  }
});

test('the publisher’s notices stand on the first page', () => {
  for (const notice of site.notices) expect(pressed(pdf.pages[0] ?? '')).toContain(pressed(notice));
});

test('the order of the trials given does not matter, to the byte', () => {
  const again = digestPdf(WHOLE, season.toReversed(), site, words);
  expect(Buffer.from(again.bytes).equals(booklet.bytes)).toBe(true);
});

test('a part of a season says which it is', async () => {
  const { bytes } = digestPdf({ year: '2026', part: 2, parts: 3 }, season.slice(0, 1), site, words);
  expect((await readPdf(bytes)).pages[0]).toContain('Seed trials sown in 2026, part 2 of 3');
  expect(pdf.text).not.toContain('part 1 of 1');
});

test('a season of many trials is several booklets, each trial in one of them', () => {
  const entries = Array.from({ length: 620 }, (_, number) => ({
    trial: makeTrial({ id: `t-${number}`, title: `Trial ${number % 310}`, sown: number < 601 ? '2025-04-01' : null }),
  }));
  const newer = { trial: makeTrial({ id: 'newer', sown: '2026-01-01' }) };
  const booklets = bookletsOf([...entries, newer]);
  expect(booklets.map(({ name, part, parts, entries: { length } }) => [name, part, parts, length])).toEqual([
    ['2026', 1, 1, 1],
    ['2025', 1, 3, 200],
    ['2025-2', 2, 3, 201],
    ['2025-3', 3, 3, 200],
  ]);
  const ids = booklets.slice(1).flatMap(({ entries: part }) => part.map(({ trial }) => trial.id));
  expect(ids.toSorted()).toEqual(entries.slice(0, 601).map(({ trial }) => trial.id).toSorted()); // prettier-ignore
  expect(bookletsOf(entries.toReversed())[0]?.entries).toEqual(booklets[1]?.entries);
  expect(bookletsOf([])).toEqual([]);
});

test('a trial belongs to the year in which it was sown, to none before', () => {
  expect(seasonOf(makeTrial({ sown: '2025-12-31', finished: '2026-02-01' }))).toBe('2025');
  expect(seasonOf(makeTrial({ sown: null }))).toBeNull();
});
