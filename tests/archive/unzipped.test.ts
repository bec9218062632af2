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

test.each([0, 6] as const)('files that lie upon one another never fill more than the zip says (level %d)', (level) => {
  const zip = zipSync({ 'a.csv': new Uint8Array(5_000_000) }, { level });
  const [entry, end] = [Buffer.from(zip).lastIndexOf('PK\u0001\u0002'), Buffer.from(zip).lastIndexOf('PK\u0005\u0006')];
  const entries = Array.from({ length: 400 }, (_, index) => {
    const copy = Buffer.from(zip.subarray(entry, end));
    copy.writeUInt32LE(10, 24); // the size it claims
    copy.write(`${100 + index}`, 46); // in place of "a.c"
    return copy;
  });
  const tail = Buffer.from(zip.subarray(end));
  for (const at of [8, 10]) tail.writeUInt16LE(400, at);
  const files = unzipped(Buffer.concat([zip.subarray(0, entry), ...entries, tail]));
  if (typeof files === 'string') throw new Error(files);
  expect(files.size).toBe(400);
  expect(new Set([...files.values()].map(({ length }) => length))).toEqual(new Set([10]));
});

test('sixty thousand files are refused by their number', () => {
  const many = Object.fromEntries(Array.from({ length: 60_000 }, (_, index) => [`${index}.csv`, new Uint8Array()]));
  expect(names(zipSync(many, { level: 0 }))).toMatch(/more than a trial can hold/);
});

test('a directory that lies about itself is damage', () => {
  const zip = zipSync({ 'a.csv': text('1') });
  const [entry, end] = [Buffer.from(zip).lastIndexOf('PK\u0001\u0002'), Buffer.from(zip).lastIndexOf('PK\u0005\u0006')];
  for (const [at, value] of [
    [end + 16, 0x7fffffff],
    [end + 16, 0],
    [entry + 42, 0x7fffffff],
    [entry + 42, 3],
  ] as const) {
    const broken = Buffer.from(zip);
    broken.writeUInt32LE(value, at);
    expect(names(broken), `${at}`).toMatch(/cannot be read as a zip/);
  }
  const odd = Buffer.from(zip);
  odd.writeUInt16LE(12, entry + 10); // packed by a method of its own
  expect(names(odd)).toMatch(/cannot be read as a zip/);
});

test('names are read as they were meant, whether the zip says that they are UTF-8 or not', () => {
  const zip = Buffer.from(zipSync({ 'möhre.csv': text('1') }));
  expect(names(zip)).toEqual(['möhre.csv']);
  for (const [start, flags] of [
    ['PK\u0001\u0002', 8],
    ['PK\u0003\u0004', 6],
  ] as const)
    zip.writeUInt16LE(0, zip.indexOf(start) + flags);
  expect(names(zip)).toEqual(['möhre.csv']);
});

test('what is no zip is said to be none', () => {
  expect(names(text('sowing,day\n'))).toMatch(/cannot be read as a zip/);
  expect(names(new Uint8Array())).toMatch(/cannot be read as a zip/);
});
