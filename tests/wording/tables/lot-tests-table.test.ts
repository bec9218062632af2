import { expect, test } from 'vitest';
import { lotTestsCaption } from '../../../src/wording/tables/lot-tests-caption.ts';
import { lotTestsTable } from '../../../src/wording/tables/lot-tests-table.ts';
import { passportTable } from '../../../src/wording/tables/passport-table.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { inventTests } from '../../charts/invent-tests.ts';
import { makeLot } from '../../support/make-trial.ts';

const words = wordsFor('en');
const tests = inventTests();
const plain = (cells: readonly string[] = []) => cells.map((cell) => cell.replaceAll('\u00A0', ' '));

test('one series on one day needs neither trial nor day in its rows', () => {
  const series = tests.filter(({ trial }) => trial.id === 'series');
  const { head, rows } = lotTestsTable(words, series);
  expect(head).toEqual([
    'Sown',
    'Treatment',
    'Time in storage (years)',
    'Came up of sown',
    'Share (%)',
    '95 % interval',
    'Units',
  ]);
  expect(plain(rows[3])).toEqual(['4 November 2024', 'Fridge', '1', '186 of 200', '93.0', '84.0 to 100.0', '4 trays']);
  expect(lotTestsCaption(words, series)).toBe('Every test of this lot, counted on day 14');
});

test('several trials and days are told in every row; a single tray says what its range leaves out', () => {
  const mixed = tests.slice(-2).map((one, index) => ({
    ...one,
    day: 14 + index,
    group: {
      ...one.group,
      seeds: 100,
      count: one.group.estimate,
      units: 1,
      interval: { level: 0.95, lower: 0, upper: 4, method: 'wilson-seeds-only' as const },
    },
  }));
  expect(plain(lotTestsTable(words, mixed).rows[1])).toEqual([
    '4 November 2026',
    'Wet start',
    'Dry',
    '100 of 100, day 15',
    '100',
    '0 to 4 (seed luck only)',
    '1 tray',
  ]);
  expect(lotTestsCaption(words, mixed)).toBe('Every test of this lot');
});

test('a passport names the descriptor where the standard has one that means the same, and leaves out what is not known', () => {
  const lot = {
    ...makeLot('leek-2025', 'leek', 'Allium porrum var. porrum'),
    cultivar: 'Fenpost',
    harvested: '2025-09-06',
    moisture: 9.5,
  };
  expect(passportTable(words, lot).rows).toEqual([
    ['Lot', 'leek-2025', ''],
    ['Crop', 'leek', 'CROPNAME'],
    ['Genus', 'Allium', 'GENUS'],
    ['Species', 'porrum', 'SPECIES'],
    ['Below the species', 'var. porrum', 'SUBTAXA'],
    ['Variety', 'Fenpost', 'ACCENAME'],
    ['Harvested', '6 September 2025', ''],
    ['Moisture before the trial (wet basis)', '9.5 %', ''],
  ]);
});
