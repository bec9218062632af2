import { describe, expect, test } from 'vitest';
import { pdfOf } from '../../../src/print/pdf-of.ts';
import { sheetsOf } from '../../../src/print/sheets/sheets-of.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeLot, makeOutcome, makeSowing, makeTreatment, makeTrial } from '../../support/make-trial.ts';
import { readPdf } from '../../support/read-pdf.ts';

const site = { ...DEFAULT_SITE, name: 'Seed Bench' };
const words = wordsFor('en');

/** Four trays in two rows, blind: codes on the trays, treatments in the key. */
const blind = makeTrial({
  lots: [makeLot('leek')],
  treatments: [
    makeTreatment('packet', { label: 'Paper packet', control: true }),
    makeTreatment('jar', { label: 'Sealed jar', handling: 'dried first' }),
  ],
  scoring: { germinated: 'loop visible', blind: 'yes', days: [5, 8, 11], counts: 'cumulative' },
  outcomes: [makeOutcome(), makeOutcome({ id: 'height', measure: 'trait', column: 'height', day: 21, primary: false })],
  traits: [{ column: 'height', unit: 'mm' }],
  sowings: [
    makeSowing('t1', 'packet', { label: 'KO', position: '1-1', batch: 'bag 1' }),
    makeSowing('t2', 'jar', { label: 'MU', position: '1-2', batch: 'jar 1' }),
    makeSowing('t3', 'jar', { label: 'FI', position: '2-1', batch: 'jar 2' }),
    makeSowing('t4', 'packet', { label: 'TA', position: '2-2', batch: 'bag 2' }),
  ],
});

async function sheets(trial: Trial) {
  const read = sheetsOf({ trial, site, words }).map(async ({ file, document }) => [
    file.replace('.pdf', ''),
    await readPdf(pdfOf([document]).bytes),
  ]);
  return Object.fromEntries(await Promise.all(read)) as Record<string, Awaited<ReturnType<typeof readPdf>>>;
}

describe('a blind trial', async () => {
  const made = await sheets(blind);

  test('has every sheet that it has use for', () => {
    expect(Object.keys(made)).toEqual([
      'sowing-sheet',
      'bench-map',
      'labels',
      'counting-sheet',
      'measuring-sheet',
      'sealed-key',
    ]);
  });

  test.each(['bench-map', 'labels', 'counting-sheet', 'measuring-sheet'])(
    'its %s has every code and tells no treatment, batch or id',
    (name) => {
      const { text } = made[name]!;
      for (const code of ['KO', 'MU', 'FI', 'TA']) expect(text).toContain(code);
      for (const secret of ['Paper packet', 'Sealed jar', 'jar 1', 'bag 1', 't1', 't4'])
        expect(text).not.toContain(secret);
    },
  );

  test('its sowing sheet does not say which tray is which', () => {
    const { text } = made['sowing-sheet']!;
    expect(text).toContain('Whoever sows needs the key');
    expect(text).toContain('1-1 KO Leek 50 1-2 MU Leek 50 2-1 FI Leek 50 2-2 TA Leek 50');
  });

  test('its key says which is which, and to be sealed', () => {
    const { text } = made['sealed-key']!;
    expect(text).toContain('KO t1 1-1 Leek Paper packet MU t2 1-2 Leek Sealed jar');
    expect(text).toContain('seal it');
  });

  test('its counting sheet says what to write and has a column a day', () => {
    const { text } = made['counting-sheet']!;
    expect(text).toContain('Counts as up: loop visible');
    expect(text).toContain('Write the number up in all on that day');
    expect(text).toContain('Write NC. That is not zero.');
    expect(text).toContain('Day 5 Day 8 Day 11');
  });

  test('its measuring sheet names trait, day and unit', () => {
    expect(made['measuring-sheet']!.text).toContain('height on day 21 Unit: mm.');
  });

  test('all are tagged tables with a title', () => {
    for (const [name, { tags, title, language }] of Object.entries(made)) {
      expect(title).toContain('Jar or packet');
      expect(language).toBe('en-GB');
      if (name !== 'labels') expect(tags).toEqual(expect.arrayContaining(['Table', 'TH', 'TD']));
    }
  });
});

test.each([
  ['counting-sheet.pdf', 3, 6],
  ['measuring-sheet.pdf', 10, 4],
])('the boxes of a row of %s are read as one cell that names all of their heads', (name, boxes, rows) => {
  const { document } = sheetsOf({ trial: blind, site, words }).find(({ file }) => file === name)!;
  const tags = Buffer.from(pdfOf([document]).bytes).toString('latin1'); // not packed
  const cells = [...tags.matchAll(/\/S \/TD\b.*?endobj/gs)].map(([cell]) => cell);
  const wide = cells.filter((cell) => cell.includes('/ColSpan'));
  expect(wide).toHaveLength(rows);
  for (const cell of wide) {
    expect(cell).toContain(`/ColSpan ${boxes}\n`);
    expect(/\/Headers \[(.*?)\]/.exec(cell)?.[1]?.match(/\(.*?\)/g)).toHaveLength(boxes);
  }
});

test('without the key there is no key sheet, and nothing fails', async () => {
  const away = { ...blind, sowings: blind.sowings.map((sowing) => ({ ...sowing, treatment: null, batch: null })) };
  expect(Object.keys(await sheets(away))).not.toContain('sealed-key');
});

test('an open trial names its treatments and needs no key', async () => {
  const made = await sheets({
    ...blind,
    scoring: { ...blind.scoring, blind: 'no' },
    sowings: blind.sowings.map((sowing) => ({ ...sowing, label: null })),
  });
  expect(Object.keys(made)).not.toContain('sealed-key');
  expect(made['sowing-sheet']!.text).toContain('1-1 t1 Leek Paper packet bag 1 50');
  expect(made['bench-map']!.text).toContain('t1 Paper packet t2 Sealed jar');
});

test('places that are no rows and columns become a list', async () => {
  const made = await sheets({ ...blind, sowings: [makeSowing('t1', 'jar', { position: 'left half of the sill' })] });
  expect(made['bench-map']!.text).toContain('left half of the sill');
});

test('200 sowings: every code on every sheet, heads repeated on every page', async () => {
  const sowings = Array.from({ length: 200 }, (_, index) =>
    makeSowing(`s${index + 1}`, index % 2 ? 'jar' : 'packet', { label: `C${String(index + 1).padStart(3, '0')}` }),
  );
  const made = await sheets({ ...blind, sowings });
  for (const { file } of sheetsOf({ trial: { ...blind, sowings }, site, words })) {
    const { text } = made[file.replace('.pdf', '')]!;
    for (const { label } of sowings) expect(text).toContain(label);
  }
  const { pages } = made['counting-sheet']!;
  expect(pages.length).toBeGreaterThan(8);
  for (const page of pages.filter((text) => /C\d{3}/.test(text))) expect(page).toContain('Day 5 Day 8 Day 11');
});

test('more days than fit beside one another get a second part', async () => {
  const days = Array.from({ length: 20 }, (_, index) => index + 3);
  const made = await sheets({ ...blind, scoring: { ...blind.scoring, days } });
  const { text } = made['counting-sheet']!;
  for (const day of days) expect(text).toContain(`Day ${day} `);
});

test('packets of a storage series say when to open them', async () => {
  const storage = { started: '2023-11-04', tests: [0, 1, 2.5], left: {} };
  const made = await sheets({ ...blind, storage });
  const { text } = made['packet-labels']!;
  expect(text).toContain('Leek Paper packet Open on 3 November 2024 Packed on: 4 November 2023');
  expect(text).toContain('Leek Sealed jar Open on 5 May 2026');
  expect(text.match(/Open on/g)).toHaveLength(4); // two treatments, two tests after the start
});
