import { getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import type { Block, PrintDocument, Table } from '../../src/print/document.ts';
import { oneLiners } from '../../src/print/one-liners.ts';
import { pdfOf } from '../../src/print/pdf-of.ts';
import { makeDocument } from '../support/make-document.ts';

const documentOf = (blocks: readonly Block[], parts: Partial<PrintDocument> = {}) =>
  makeDocument([{ kind: 'title', text: 'Leaves' }, ...blocks], parts);
const tableOf = (rows: Table['rows'], parts: Partial<Table> = {}): Table => ({
  kind: 'table',
  caption: null,
  head: ['Tray', 'Seen'],
  rows,
  widths: [{ mm: 22 }, { share: 1 }],
  figures: [],
  rules: 'lines',
  rowHeight: 0,
  ...parts,
});
const oneLine = (table: Table, document = documentOf([table])) => oneLiners(document).get(table);

/** Lines of a set document, as they stand on its pages. */
async function linesOf(document: PrintDocument): Promise<string[]> {
  const pdf = await getDocumentProxy(pdfOf([document]).bytes);
  const lines = new Map<string, string>();
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    for (const item of items) {
      if (!('str' in item)) continue;
      const line = `${number} ${Math.round(item.transform[5] as number)}`;
      lines.set(line, (lines.get(line) ?? '') + item.str);
    }
  }
  return [...lines.values()];
}

test('a row that is said to take one line takes one: wide letters, narrow ones, figures', async () => {
  const texts = ['W', 'mw', 'il', '8', '0', '1 of 200 ', 'seeds up ', 'Œuvre ', 'Größe ', '(−12 to 3) ', '“so” '];
  for (const density of ['roomy', 'close', 'tight'] as const) {
    const rows = texts.flatMap((text) =>
      Array.from({ length: 60 }, (_, at) => [
        `T${at}`,
        text
          .repeat(at + 1)
          .trim()
          .slice(0, 110 - text.length),
      ]),
    );
    const beside = { kind: 'columns', first: 70, columns: [[], [tableOf(rows)]] } as const;
    const document = documentOf([beside], { density });
    const said = oneLine(beside.columns[1][0], document) ?? [];
    const lines = (await linesOf(document)).map((line) => line.replace(/[\s\u200B]/g, ''));
    const short = rows.filter((_, at) => said[at]).map(([, text = '']) => text.replace(/\s/g, ''));
    expect(short.length).toBeGreaterThan(rows.length / 6);
    expect(short.length).toBeLessThan(rows.length);
    for (const text of short) expect(lines.some((line) => line.includes(text)), text).toBe(true); // prettier-ignore
  }
});

test('nothing is said of a row with other letters, several lines, or a column as wide as its content', () => {
  expect(oneLine(tableOf([['a', 'b'], ['a', 'בצל'], ['a', 'b\nc'], ['', '']]))).toEqual([true, false, false, true]); // prettier-ignore
  expect(oneLine(tableOf([['a', 'b']], { widths: ['auto', { share: 1 }] }))).toEqual([false]);
  expect(oneLine(tableOf([['a', 'b']], { rowHeight: 8 }))).toEqual([false]);
});

test('what no face has counts as the number that is written for it', () => {
  const [plain, drawn] = oneLine(tableOf([['abcdefg', ''], ['🌱🌱', '']])) ?? []; // prettier-ignore
  expect([plain, drawn]).toEqual([true, false]); // [U+1F331][U+1F331]
});

test('a narrower place has fewer such rows', () => {
  const rows = Array.from({ length: 200 }, (_, at) => ['T', 'x'.repeat(at)]);
  const count = (blocksOf: (table: Table) => Block) => {
    const table = tableOf(rows);
    return oneLiners(documentOf([blocksOf(table)]))
      .get(table)
      ?.filter(Boolean).length;
  };
  const counts = [
    count((table) => table),
    count((table) => ({ kind: 'box', whole: true, blocks: [table] })),
    count((table) => ({ kind: 'spread', main: [table], beside: [] })),
    count((table) => ({ kind: 'spread', main: [], beside: [table] })),
  ];
  expect(counts).toEqual([...counts].sort((a = 0, b = 0) => b - a));
  expect(new Set(counts).size).toBe(4);
});
