import { expect, test } from 'vitest';
import { packed, unpacked } from '../../src/files/packed-files.ts';
import { madeFile } from '../../src/files/made-file.ts';
import type { Table } from '../../src/archive/table.ts';
import type { PublishedFile } from '../../src/files/published-files.ts';

test('files come back as they were packed: names, digests, tables and every byte', () => {
  const table: Table = {
    name: 'counts-long',
    title: 'Counts',
    columns: [{ name: 'day', type: 'integer', unit: null, meaning: 'Day' }],
    rows: [[1]],
  };
  const files = [
    madeFile('empty.csv', ''),
    madeFile('über.txt', 'line 1\nline 2\n'),
    madeFile('counts-long.csv', 'day\n1\n', table),
    madeFile(
      'all.zip',
      Uint8Array.from({ length: 300 }, (_, index) => index % 256),
    ),
  ].map((file): PublishedFile => ({ ...file, kind: 'made' }));
  expect(unpacked(packed(files))).toEqual(files);
});
