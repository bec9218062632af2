import { expect, test } from 'vitest';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { units } from '../../src/charts/units.ts';
import { invent } from './invented.ts';
import { outline } from './outline.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const plain = invent({
  treatments: [
    ['Packet', 0.6],
    ['Jar', 0.9],
  ],
  trays: 3,
});
const blocks = invent({
  treatments: [
    ['Packet', 0.6],
    ['Jar', 0.9],
    ['Freezer', 0.8],
  ],
  trays: 3,
  blocks: true,
});
const draw = (invented = plain, result = invented.result) =>
  units(invented.trial, invented.analysis, result, 'leek', words);
const rows = (chart: ReturnType<typeof draw>, name: string) => chart.spec.datasets?.[name] as Record<string, unknown>[];

test('says how far the units ranged, what is drawn, and every value', () => {
  const { kind, title, subtitle, description, table } = draw();
  expect({ kind, title, subtitle, description, table }).toMatchInlineSnapshot(`
    {
      "description": "Dot chart of every tray. Packet: 56 %; 3 trays: 56 %, 60 % and 52 %. Jar: 87 %; 3 trays: 94 %, 82 % and 86 %.",
      "kind": "units",
      "subtitle": "One dot for each tray, day 14.",
      "table": {
        "head": [
          "Treatment",
          "Unit",
          "Came up of sown",
          "Value",
          "95 % interval",
        ],
        "names": 2,
        "rows": [
          [
            "Packet",
            "leek-t0-1",
            "28 of 50",
            "56 %",
            "",
          ],
          [
            "Packet",
            "leek-t0-2",
            "30 of 50",
            "60 %",
            "",
          ],
          [
            "Packet",
            "leek-t0-3",
            "26 of 50",
            "52 %",
            "",
          ],
          [
            "Packet",
            "Together",
            "84 of 150",
            "56 %",
            "48 % to 64 %",
          ],
          [
            "Jar",
            "leek-t1-1",
            "47 of 50",
            "94 %",
            "",
          ],
          [
            "Jar",
            "leek-t1-2",
            "41 of 50",
            "82 %",
            "",
          ],
          [
            "Jar",
            "leek-t1-3",
            "43 of 50",
            "86 %",
            "",
          ],
          [
            "Jar",
            "Together",
            "131 of 150",
            "87 %",
            "79 % to 95 %",
          ],
        ],
      },
      "title": "Every tray. Packet: 52 % to 60 %; Jar: 82 % to 94 %",
    }
  `);
});

test('a dot for every unit of the analysis, at its value', () => {
  expect(rows(draw(), 'dots').map(({ at }) => at)).toEqual(plain.result.values.map(({ value }) => value));
  expect(outline(draw())).toMatchSnapshot();
});

test('units of one block are joined through the treatments; without blocks nothing is', async () => {
  expect(rows(draw(), 'joins')).toEqual([]);
  const { drawn } = readSvg(await renderSvg(draw(blocks).spec, 'x'));
  expect(drawn.filter(({ layer }) => layer === 'joins')).toHaveLength(3 * 2);
  const value = (treatment: string) =>
    blocks.result.values.filter(({ block, treatment: of }) => block === 'shelf 2' && of === treatment)[0]?.value;
  expect(rows(draw(blocks), 'joins')).toEqual(
    expect.arrayContaining([
      expect.objectContaining({ at: value('t0'), to: value('t1') }),
      expect.objectContaining({ at: value('t1'), to: value('t2') }),
    ]),
  );
  expect(draw(blocks).subtitle).toContain('lines join those of the same block');
});

test('several units of a block are each joined to each of the next row', () => {
  const values = blocks.result.values.map((unit) => ({
    ...unit,
    block: unit.block === 'shelf 3' ? 'shelf 2' : unit.block,
  }));
  const chart = draw(blocks, { ...blocks.result, values });
  expect(rows(chart, 'joins')).toHaveLength(2 * (1 + 2 * 2));
});

test('units without a value are listed and not drawn', () => {
  const values = plain.result.values.map((unit, index) => (index === 0 ? { ...unit, value: null, count: null } : unit));
  const chart = draw(plain, { ...plain.result, values });
  expect(rows(chart, 'dots')).toHaveLength(5);
  expect(chart.table.rows[0]).toEqual(['Packet', 'leek-t0-1', 'not known', 'not known', '']);
});

test('germination never leaves 0 to 100, and shares the axis of its own values', async () => {
  const ends = invent({
    treatments: [
      ['None', 0],
      ['All', 1],
    ],
    trays: 2,
  });
  expect(draw(ends).spec.params).toMatchObject([{ value: 0 }, { value: 100 }, {}, {}]);
  const high = invent({
    treatments: [
      ['A', 0.97],
      ['B', 1],
    ],
    trays: 2,
  });
  expect(draw(high).spec.params).toMatchObject([{ value: 85 }, { value: 100 }, {}, {}]);
});

test('with one tray of a kind its range is said to hold the luck of seeds only', () => {
  const groups = plain.result.groups.map((group) => ({
    ...group,
    interval: { ...group.interval!, method: 'wilson-seeds-only' as const },
  }));
  const ranges = (result: typeof plain.result) => draw(plain, result).table.rows.map((row) => row.at(-1) ?? '');
  expect(ranges({ ...plain.result, groups }).filter((range) => range.includes('seed\u00A0luck'))).toHaveLength(2);
  expect(ranges(plain.result).filter((range) => range.includes('seed\u00A0luck'))).toEqual([]);
});

test('times have the finding as title, since no curve has it', () => {
  const result = { ...plain.result, measure: 't50' as const, unit: 'days' };
  expect(draw(plain, result).title).toMatch(/^Jar: /);
  expect(draw(plain, result).subtitle).toBe('One dot for each tray.');
});

test('a storage series has a row for each test, with its time', () => {
  const stored = [0, 2];
  const result = {
    ...plain.result,
    groups: plain.result.groups.flatMap((group) => stored.map((time) => ({ ...group, stored: time }))),
    values: plain.result.values.flatMap((unit) => stored.map((time) => ({ ...unit, stored: time }))),
  };
  const notes = rows(draw(plain, result), 'notes').map(({ text }) => text);
  expect(notes.filter((note) => /^(stored|at the start)/.test(String(note)))).toEqual(
    Array(2).fill(['at the start', 'stored 2 years']).flat(),
  );
  expect(rows(draw(plain, result), 'dots')).toHaveLength(12);
  expect(draw(plain, result).subtitle).not.toContain('At the start');
  const { head, rows: told } = draw(plain, result).table;
  const times = told.map((row) => row[head.indexOf(words.ui['table.stored'])]);
  const each = ['0 years', '2 years'].flatMap((time) => Array<string>(4).fill(time));
  expect(times.map((time) => time?.replace('.0', ''))).toEqual([...each, ...each]);
  const once = { ...result, values: result.values.map((unit) => (unit.stored === 0 ? { ...unit, unit: 'y0' } : unit)) };
  expect(draw(plain, once).subtitle).toMatch(/day 14\. At the start the same .+ for every treatment\.$/);
});

test('several lots stand under one another on one axis, each under its name; blocks are joined within a lot only', async () => {
  const lots = invent({
    treatments: [
      ['Packet', 0.6],
      ['Jar', 0.9],
    ],
    lots: ['leek', 'onion'],
    trays: 3,
    blocks: true,
  });
  const chart = units(lots.trial, lots.analysis, lots.result, ['leek', 'onion'], words);
  expect(rows(chart, 'headings').map(({ text }) => text)).toEqual(['Leek (leek)', 'Leek (onion)']);
  expect(rows(chart, 'labels').map(({ text }) => text)).toEqual(['Packet', 'Jar', 'Packet', 'Jar']);
  expect(rows(chart, 'dots').map(({ at }) => at)).toEqual(lots.result.values.map(({ value }) => value));
  expect(rows(chart, 'joins')).toHaveLength(2 * 3);
  expect(rows(chart, 'partings')).toHaveLength(1);
  expect(chart.table.names).toBe(3);
  expect(chart.table.head[0]).toBe('Lot');
  expect(chart.table.rows.map(([lot]) => lot)).toEqual([
    ...Array(8).fill('Leek (leek)'),
    ...Array(8).fill('Leek (onion)'),
  ]);
  const { drawn } = readSvg(await renderSvg(chart.spec, 'x'));
  expect(drawn.filter(({ layer }) => layer === 'headings')).toHaveLength(2);
});

test('days that differ from lot to lot are not told as one', () => {
  const lots = invent({ treatments: [['Packet', 0.6], ['Jar', 0.9]], lots: ['leek', 'onion'] }); // prettier-ignore
  const drawn = (days: Record<string, number>) =>
    units(lots.trial, lots.analysis, { ...lots.result, days }, ['leek', 'onion'], words).subtitle;
  expect(drawn({ leek: 14, onion: 14 })).toBe('One dot for each tray, day 14.');
  expect(drawn({ leek: 14, onion: 21 })).toBe('One dot for each tray.');
});
