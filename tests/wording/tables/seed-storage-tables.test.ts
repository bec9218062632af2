import { expect, test } from 'vitest';
import {
  afterTable,
  dryingTable,
  expectedTable,
  scaleTable,
  sealedTable,
} from '../../../src/wording/tables/seed-storage-tables.ts';
import type { TextTable } from '../../../src/wording/tables/numbers-table.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';

const [en, de] = [wordsFor('en'), wordsFor('de')];
const shown = ({ head, rows }: TextTable) => [head, ...rows].map((row) => row.join(' | ')).join('\n');

test('the times that the equation expects, none told apart beyond twenty years', () => {
  expect(shown(expectedTable(en))).toMatchInlineSnapshot(`
    "Crop | 6 %, 5 °C | 8 %, 5 °C | 8 %, 15 °C | 10 %, 20 °C | 12 %, 25 °C
    Barley | 20+ | 20+ | 19 | 2.7 | 0.5
    Onion | 20+ | 8.9 | 2.9 | 0.7 | 0.2
    Soybean | 20+ | 16 | 4.2 | 0.9 | 0.2
    Chickpea | 20+ | 20+ | 19 | 3.4 | 0.7
    Cowpea | 20+ | 20+ | 18 | 3.7 | 0.9
    Lettuce | 20+ | 8.9 | 2.4 | 0.4 | 0.1
    Maize | 20+ | 20+ | 20+ | 3.1 | 0.6
    Sorghum | 20+ | 20+ | 18 | 3.1 | 0.6
    Pearl millet | 20+ | 20+ | 12 | 1.9 | 0.4
    Sugar beet | 20+ | 20+ | 17 | 3.2 | 0.7
    African rice | 20+ | 20+ | 18 | 3.5 | 0.8
    Wheat | 20+ | 19 | 7.3 | 1.4 | 0.3
    Foxtail millet | 20+ | 18 | 7.1 | 1.4 | 0.3
    Sugarcane | 20+ | 13 | 5.0 | 1.0 | 0.2
    Finger millet | 20+ | 20+ | 12 | 2.7 | 0.7
    Kodo millet | 20+ | 19 | 7.3 | 1.6 | 0.4
    Rice | 20+ | 20+ | 9.8 | 2.2 | 0.6
    Potato (true seed) | 15 | 3.4 | 1.3 | 0.2 | 0.1"
  `);
});

test('drying by mass, moisture afterwards, and what a scale allows', () => {
  expect(shown(dryingTable(en))).toMatchInlineSnapshot(`
    "Moisture now | to 5 % | to 6 % | to 7 % | to 8 % | to 10 %
    7 % | 97.9 | 98.9 |  |  | 
    8 % | 96.8 | 97.9 | 98.9 |  | 
    9 % | 95.8 | 96.8 | 97.8 | 98.9 | 
    10 % | 94.7 | 95.7 | 96.8 | 97.8 | 
    12 % | 92.6 | 93.6 | 94.6 | 95.7 | 97.8
    14 % | 90.5 | 91.5 | 92.5 | 93.5 | 95.6
    16 % | 88.4 | 89.4 | 90.3 | 91.3 | 93.3"
  `);
  expect(shown(afterTable(en))).toMatchInlineSnapshot(`
    "Moisture at the start | 1 % lost | 2 % lost | 3 % lost | 4 % lost | 5 % lost
    6 % | 5.1 | 4.1 | 3.1 | 2.1 | 1.1
    8 % | 7.1 | 6.1 | 5.2 | 4.2 | 3.2
    10 % | 9.1 | 8.2 | 7.2 | 6.3 | 5.3
    12 % | 11.1 | 10.2 | 9.3 | 8.3 | 7.4
    14 % | 13.1 | 12.2 | 11.3 | 10.4 | 9.5
    16 % | 15.2 | 14.3 | 13.4 | 12.5 | 11.6"
  `);
  expect(shown(scaleTable(en))).toMatchInlineSnapshot(`
    "Seed weighed | steps of 0.01 g | steps of 0.1 g | steps of 1 g
    5 g | 3.80 to 4.20 % | 2.02 to 5.94 % | 0.00 to 21.82 %
    20 g | 3.95 to 4.05 % | 3.51 to 4.49 % | 0.00 to 8.78 %
    50 g | 3.98 to 4.02 % | 3.80 to 4.20 % | 2.02 to 5.94 %
    100 g | 3.99 to 4.01 % | 3.90 to 4.10 % | 3.02 to 4.98 %
    500 g | 4.00 to 4.00 % | 3.98 to 4.02 % | 3.80 to 4.20 %"
  `);
  // 100 g at 10 % to 5 %: 94.73684 g (R arithmetic).
  expect(dryingTable(en).rows.find(([now]) => now === '10 %')?.[1]).toBe('94.7');
});

test('the limits of sealed packets, every crop once, and all of it in German', () => {
  expect(shown(sealedTable(en))).toMatchInlineSnapshot(`
    "Greatest moisture | Crops
    4.5 % | pepper
    5.0 % | broccoli, Brussels sprouts, cabbage, Chinese cabbage, cauliflower, collards, kale, kohlrabi, mustard, radish, swede and turnip
    5.5 % | lettuce and tomato
    6.0 % | cucumber, aubergine, melon, parsnip, pumpkin, squash and all that are not named
    6.5 % | chives, leek, onion, Welsh onion, parsley and watermelon
    7.0 % | garden and lima beans, carrot, celery, celeriac and pea
    7.5 % | beet and chard
    8.0 % | sweet corn and spinach"
  `);
  expect(shown(sealedTable(de))).toMatchInlineSnapshot(`
    "Höchste Feuchte | Kulturen
    4,5 % | Paprika
    5,0 % | Brokkoli, Rosenkohl, Kopfkohl, Chinakohl, Blumenkohl, Blattkohl, Grünkohl, Kohlrabi, Senf, Radieschen und Rettich, Steckrübe und Speiserübe
    5,5 % | Salat und Tomate
    6,0 % | Gurke, Aubergine, Melone, Pastinake, Gartenkürbis, Speisekürbis und alle nicht genannten
    6,5 % | Schnittlauch, Lauch, Zwiebel, Winterheckzwiebel, Petersilie und Wassermelone
    7,0 % | Garten- und Limabohnen, Möhre, Stangensellerie, Knollensellerie und Erbse
    7,5 % | Rote Bete und Mangold
    8,0 % | Zuckermais und Spinat"
  `);
  for (const table of [expectedTable, dryingTable, afterTable, scaleTable, sealedTable]) {
    expect(table(de).rows.map((row) => row.length)).toEqual(table(en).rows.map((row) => row.length));
    expect(
      table(de)
        .rows.flat()
        .every((cell) => cell !== undefined),
    ).toBe(true);
  }
});
