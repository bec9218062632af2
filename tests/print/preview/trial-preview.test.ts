import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { CARD } from '../../../src/charts/chart-theme.ts';
import { pngOf } from '../../../src/print/preview/png-of.ts';
import { previewCard } from '../../../src/print/preview/preview-card.ts';
import { trialPreview } from '../../../src/print/preview/trial-preview.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { publishedDemo } from '../../support/published-demo.ts';

const demo = (await publishedDemo()).map(({ trial }) => ({ trial, analysis: analyse(trial) }));
const words = wordsFor('en');
const told = (id: string) => {
  const { trial, analysis } = demo.find((each) => each.trial.id === id) as (typeof demo)[number];
  return trialPreview(trial, analysis, DEFAULT_SITE, words);
};
const HOSTILE = {
  above: 'A & <b> 🌱 שלום',
  title: 'long '.repeat(60),
  asked: '\u0000"?\uD800',
  found: null,
  below: '',
};

test('the picture of a report says what was asked, its first finding with its range, and that there are more', () => {
  expect(told('parsley-soaked-a-day')).toMatchInlineSnapshot(`
    {
      "above": "Seed trials",
      "asked": "Does parsley come up better when the seed is soaked in water for a day before sowing?",
      "below": "parsley · finished · Oda Quennelby and Kesh Varrowin",
      "found": {
        "shape": "above",
        "text": "Soaked: 16 more per 100 (just over 8 to 24 more)",
        "words": "came up more",
      },
      "title": "Parsley seed soaked for a day",
    }
  `);
  expect(told('leek-shed-or-fridge').found?.text).toMatchInlineSnapshot(
    `"Fridge, stored 1 year: alike within 10 per 100 (9 fewer to 8 more) · and 2 more"`,
  );
});

test('before the last count it says nothing of treatments', () => {
  expect(told('leek-wet-start')).toMatchObject({ found: null, below: expect.stringContaining('growing') });
});

test('it is as large as places that share pages ask for, and the same at every making', async () => {
  const card = previewCard(told('herbs-lit-or-covered'));
  const png = pngOf(card);
  const { format, width, height } = await sharp(png).metadata();
  expect({ format, width, height }).toEqual({ format: 'png', width: 1200, height: 630 });
  expect(pngOf(card)).toEqual(png);
});

test('what a contributor writes stays text, and what no face has is written as its number', () => {
  const card = previewCard(HOSTILE);
  expect(card).toContain('A &amp; &lt;b&gt; [U+1F331]');
  expect(card).toContain('…</text>');
  expect(() => pngOf(card)).not.toThrow();
});

test('every finding of the demonstration stands in it whole, with its range', () => {
  for (const { trial, analysis } of demo) {
    const preview = trialPreview(trial, analysis, DEFAULT_SITE, words);
    const found = preview.found?.text ?? '';
    const drawn = [...previewCard(preview).matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, line]) => line).join(' ');
    expect(drawn.replaceAll('&amp;', '&'), trial.id).toContain(found);
  }
});

test('its colours are those of the pages', () => {
  const tokens = readFileSync(join(import.meta.dirname, '..', '..', '..', 'src', 'styles', 'tokens.css'), 'utf8');
  for (const colour of Object.values(CARD)) expect(tokens).toContain(colour);
});
