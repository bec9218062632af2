import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { unzipped } from '../../src/archive/unzipped.ts';

const text = (words: string) => new TextEncoder().encode(words);
const names = (zip: Uint8Array) => {
  const files = unzipped(zip);
  return typeof files === 'string' ? files : [...files.keys()];
};

test('files are found with and without one folder around them; what a computer adds is passed over', () => {
  const files = { 'a.csv': text('1'), 'b.csv': text('2') };
  expect(names(zipSync(files))).toEqual(['a.csv', 'b.csv']);
  expect(names(zipSync({ 'leek/a.csv': text('1'), 'leek/.DS_Store': text('x'), '__MACOSX/leek/a.csv': text('x') }))).toEqual(['a.csv']); // prettier-ignore
});

test.each(['../a.csv', 'x/../../a.csv', '/etc/passwd', 'C:/a.csv', '..\\a.csv', 'x\\a.csv', 'a\u0000.csv'])(
  'a zip with the name %j is refused',
  (name) => expect(names(zipSync({ 'ok.csv': text('1'), [name]: text('2') }))).toMatch(/leads out of the folder/),
);

test('a zip bomb is refused before it is unpacked', () => {
  const huge = zipSync({ 'a.csv': new Uint8Array(20_000_001) });
  expect(huge.length).toBeLessThan(100_000);
  expect(names(huge)).toMatch(/more than a trial can hold/);
  const many = Object.fromEntries(Array.from({ length: 501 }, (_, index) => [`${index}.csv`, text('')]));
  expect(names(zipSync(many))).toMatch(/more than a trial can hold/);
});

test('a file that is longer than the zip says never fills more than it says', () => {
  const zip = zipSync({ 'a.csv': new Uint8Array(1_000_000) });
  const view = new DataView(zip.buffer);
  for (let at = 0; at + 4 <= zip.length; at++) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 10, true); // size in the central directory
  }
  const files = unzipped(zip);
  if (typeof files === 'string') throw new Error(files);
  expect(files.get('a.csv')?.length).toBe(10);
});

test('what is no zip is said to be none', () => {
  expect(names(text('sowing,day\n'))).toMatch(/cannot be read as a zip/);
  expect(names(new Uint8Array())).toMatch(/cannot be read as a zip/);
});
