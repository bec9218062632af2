import { describe, expect, test } from 'vitest';
import { readPublishable } from '../../../src/files/read-publishable.ts';
import { dataDigest } from '../../../src/print/data-digest.ts';
import type { About } from '../../../src/print/summary/about.ts';
import { summaryPdf } from '../../../src/print/summary/summary-pdf.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { citeLine } from '../../../src/wording/tables/cite-line.ts';
import { countsTable } from '../../../src/wording/tables/counts-table.ts';
import { groupsTable } from '../../../src/wording/tables/groups-table.ts';
import { shortStorage } from '../../../src/wording/short-storage.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { plain, readPdf } from '../../support/read-pdf.ts';

const { site, trials } = await readPublishable('content');
const words = wordsFor(site.language);
const aboutOf = (trial: Trial): About => ({
  trial,
  analysis: publishedAnalysis(trial, words),
  site,
  words,
  address: `${site.base}/trials/${trial.id}/`,
});
const cellsOf = ({ rows }: { rows: readonly (readonly string[])[] }) => rows.map((row) => row.join(' '));
/** Without blanks: a line that ends at a hyphen would else have one. */
const pressed = (text: string) => plain(text).replaceAll(' ', '');

describe.each(trials.map((trial) => [trial.id, aboutOf(trial)] as const))('%s', async (_, about) => {
  const { trial, analysis, address } = about;
  const summary = await summaryPdf(about);
  const pdf = await readPdf(summary.bytes);
  const compared = analysis.results.length > 0;
  const has = (text: string) => expect(pressed(pdf.text)).toContain(pressed(text));

  test('takes one or two pages and says so', () => {
    expect(pdf.pages.length).toBe(summary.pages);
    expect(pdf.pages.length).toBeLessThanOrEqual(2);
    expect(pdf.pages.at(-1)).toContain(`Page ${pdf.pages.length} of ${pdf.pages.length}`);
  });

  test('is tagged, with title, language and text alternatives', () => {
    expect(pdf.title).toBe(`${trial.title}: Summary of a seed trial`);
    expect(pdf.language).toBe('en-GB');
    expect(pdf.tags.filter((tag) => tag === 'H1')).toHaveLength(1);
    expect(pdf.tags).toEqual(expect.arrayContaining(['H2', 'P', 'Figure']));
    expect(pdf.alternatives).toContain(`QR code of the address ${address}`);
    expect(pdf.tags.filter((tag) => tag === 'Figure').length).toBe(pdf.alternatives.length);
  });

  test('says who, how to cite, and which data', () => {
    has(trial.title);
    has(trial.question);
    for (const { name } of trial.authors) has(name);
    has(citeLine(words, trial, site, address));
    has(`${dataDigest(analysis).slice(0, 12)} (SHA-256`);
    for (const { title, sentences } of words.notices(trial, site.notices)) [title, ...sentences].forEach(has);
  });

  if (compared) {
    test('has the answer, its trust and its limits in the words of the page', () => {
      for (const { sentence, mark } of words.inShort(trial, analysis)) [sentence, mark.words].forEach(has);
      for (const { question, answerWords, detail } of words.trust(trial, analysis)) {
        has(`${question} ${answerWords} ${detail}`);
      }
      for (const { id } of analysis.caveats) has(words.caveatName(id));
      words.cannotTell(trial, analysis).forEach(has);
      if (trial.id === 'lettuce-surface-or-covered') {
        has('Leaf length on day 21: Tray r14'); // a caveat of another outcome than the one that the answer is about
      }
      for (const { sentence } of shortStorage(words, trial, analysis)) has(sentence);
      const isSeries = analysis.results.find(({ primary }) => primary)?.measure === 'storage';
      expect(pdf.alternatives.join(' ')).toContain(isSeries ? 'Germination at each storage time' : 'Differences from the control'); // prettier-ignore
    });

    test('has the numbers of the page', () => {
      const primary = analysis.results.find((result) => result.primary)!;
      for (const { id } of trial.lots) cellsOf(groupsTable(words, trial, primary, id)).forEach(has);
      for (const result of analysis.results) {
        for (const comparison of result.comparisons) {
          has(`${words.comparisonName(trial, comparison)} ${words.difference(comparison.estimate, result)}`);
        }
      }
    });
  } else {
    test('has plan and counts, and compares nothing', () => {
      has(words.ui[`statusNote.${trial.status}`]);
      if (trial.counts.some(({ germinated }) => germinated !== null))
        cellsOf(countsTable(words, trial, false)).forEach(has);
      expect(pdf.text).not.toContain(words.ui['print.comparisons']);
      expect(pdf.alternatives).toHaveLength(1); // the QR code
    });
  }

  test('is the same to the byte when made again', async () => {
    expect(Buffer.from((await summaryPdf(about)).bytes).equals(summary.bytes)).toBe(true);
  });

  test('holds no face but ours', () => {
    const faces = Buffer.from(summary.bytes)
      .toString('latin1')
      .matchAll(/\/BaseFont \/[A-Z]{6}\+([A-Za-z0-9]+)/g);
    const families = new Set(Array.from(faces, ([, name]) => name));
    expect(families).not.toHaveLength(0);
    for (const family of families)
      expect(family).toMatch(/^(SourceSerif4|AtkinsonHyperlegibleNext|NotoSans(Hebrew|Arabic))$/);
  });
});
