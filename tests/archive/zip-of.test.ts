import { expect, test } from 'vitest';
import { unzipped } from '../../src/archive/unzipped.ts';
import { zipEntries } from '../../src/archive/zip-entries.ts';
import { zipOf } from '../../src/archive/zip-of.ts';

const bytes = new TextEncoder().encode('day,seeds up\n'.repeat(100));

test('what is packed already is stored, tables, texts and PDFs are packed; all come out as they went in', () => {
  const names = ['a.csv', 'trial.yaml', 'sheets/counting-sheet.pdf', 'repeat-leek.zip', 'photo.webp', 'PHOTO.JPG'];
  const zip = zipOf(
    'leek',
    names.map((name) => ({ name, bytes })),
  );
  const methods = (zipEntries(zip) ?? []).map(({ name, method }) => [name, method === 0 ? 'stored' : 'packed']);
  expect(methods).toEqual([
    ['leek/a.csv', 'packed'],
    ['leek/trial.yaml', 'packed'],
    ['leek/sheets/counting-sheet.pdf', 'packed'],
    ['leek/repeat-leek.zip', 'stored'],
    ['leek/photo.webp', 'stored'],
    ['leek/PHOTO.JPG', 'stored'],
  ]);
  const files = unzipped(zip);
  expect(typeof files === 'string' ? files : [...files.values()]).toEqual(names.map(() => bytes));
});
