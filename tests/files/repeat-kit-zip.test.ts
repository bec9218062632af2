import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readContent } from '../../src/files/read-content.ts';
import { repeatKitZip } from '../../src/files/repeat-kit-zip.ts';
import { readPdf } from '../support/read-pdf.ts';
import { temporaryContent } from './temporary-content.ts';

const ADDRESS = 'https://example.org/trials/leek/';

async function kit(): Promise<Readonly<Record<string, Uint8Array>>> {
  const { site, trials } = await readContent(await temporaryContent());
  const trial = trials[0]?.trial;
  const zip = trial && repeatKitZip(trial, ADDRESS, site);
  const again = trial && repeatKitZip(trial, ADDRESS, site);
  if (!zip || !again) throw new Error('there is no kit');
  expect(Buffer.from(zip).equals(again)).toBe(true);
  return unzipSync(zip);
}

test('the kit holds a counting sheet of its layout that names no treatment', async () => {
  const held = await kit();
  const { text } = await readPdf(held['repeat-kit/repeat-leek/sheets/counting-sheet.pdf'] ?? new Uint8Array());
  for (const sowing of ['s1', 's2', 's3', 's4', 'Day 5', 'Day 8']) expect(text).toContain(sowing);
  expect(text).not.toMatch(/Paper packet|Sealed jar/);
  expect(held).not.toHaveProperty(['repeat-kit/repeat-leek/sheets/sealed-key.pdf']);
});

test('dropped into another content folder and filled in, it is a valid trial that links back', async () => {
  const folder = await temporaryContent({ 'site.yaml': 'name: Elsewhere\nbase: https://other.example\nlanguage: en\nlicence: CC-BY-4.0\n' }); // prettier-ignore
  for (const [name, bytes] of Object.entries(await kit())) {
    const path = join(folder, 'trials', name.replace('repeat-kit/', ''));
    if (name === 'repeat-kit/README.txt') continue;
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, bytes);
  }
  const edit = async (file: string, ...changes: readonly (readonly [RegExp, string])[]) => {
    const path = join(folder, 'trials/repeat-leek', file);
    const text = changes.reduce((all, [from, to]) => all.replace(from, to), await readFile(path, 'utf8'));
    await writeFile(path, text);
  };
  const read = async () => (await readContent(folder)).trials.find(({ id }) => id === 'repeat-leek');
  expect((await read())?.problems.map(({ file }) => file.split('/').at(-1))).toContain('people.yaml');

  await edit('people.yaml', [/name: ""/, 'name: Ines Aldermoor']);
  await edit('trial.yaml', [/status: planned/, 'status: finished\nsown: 2027-04-01']);
  await edit('lots.yaml', [/leek-2025:/, 'leek-2026:\n  harvested: 2026']);
  await edit('trial.yaml', [/leek-2025/, 'leek-2026']);
  await edit('sowings.csv', [/leek-2025/g, 'leek-2026']);
  await edit('counts.csv', [/(,5),$/gm, '$1,20'], [/(,8),$/gm, '$1,41']);
  const found = await read();
  expect(found?.problems).toEqual([]);
  expect(found?.trial).toMatchObject({ status: 'finished', repeats: ADDRESS });
  expect(found?.trial?.counts.map(({ germinated }) => germinated)).toEqual([20, 41, 20, 41, 20, 41, 20, 41]);
});
