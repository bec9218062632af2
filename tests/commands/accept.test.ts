import { readdir, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { zipSync, type Zippable } from 'fflate';
import { expect, test } from 'vitest';
import { runAccept } from '../../src/commands/run-accept.ts';
import { temporaryContent } from '../files/temporary-content.ts';
import { TRIAL_FILES, type TextFiles } from '../trial/trial-files.ts';

const LINK = { attrs: 0o120777 << 16, os: 3 };
const asBytes = (text: string | Uint8Array) => (typeof text === 'string' ? new TextEncoder().encode(text) : text);
const inFolder = (folder: string, files: TextFiles = TRIAL_FILES): Zippable =>
  Object.fromEntries(Object.entries(files).map(([name, text]) => [`${folder}${name}`, asBytes(text ?? '')]));

async function accept(zip: Zippable | Uint8Array, changed: TextFiles = {}, name = 'sent.zip') {
  const folder = await temporaryContent(changed);
  const path = join(folder, name);
  await writeFile(path, zip instanceof Uint8Array ? zip : zipSync(zip));
  let [out, err] = ['', ''];
  const code = await runAccept([path, '--content', folder], {
    out: (text) => (out += text),
    err: (text) => (err += text),
    terminal: false,
  });
  const shown = (text: string) =>
    text.replaceAll(relative(process.cwd(), folder), 'content').replaceAll(folder, 'content');
  const files = (await readdir(join(folder, 'trials'), { recursive: true })).filter((file) => !file.startsWith('leek')).toSorted(); // prettier-ignore
  expect((await readdir(folder)).filter((file) => file.startsWith('.'))).toEqual([]);
  return { code, out: shown(out), err: shown(err), files };
}

test('a good trial is taken in under the name of its folder; what nothing reads stays behind', async () => {
  const zip = { ...inFolder('oats/'), 'oats/notes.docx': asBytes('x'), 'oats/__proto__': asBytes('x') };
  const { code, out, files } = await accept(zip);
  expect(code).toBe(0);
  expect(out).toMatchInlineSnapshot(`
    "1 trial read: no errors, no warnings.

    Not unpacked, as nothing reads it: notes.docx, __proto__

    The trial stands in content/trials/oats now. The zip may go; look at the trial with npm run dev.
    "
  `);
  expect(files).toEqual(['oats', 'oats/counts.csv', 'oats/sowings.csv', 'oats/trial.yaml']);
});

test('a zip without a folder is named by its file; one of a repeat kit by the folder inside', async () => {
  expect((await accept(inFolder(''), {}, 'beans.zip')).files).toContain('beans/trial.yaml');
  const kit = { 'repeat-kit/README.txt': asBytes('x'), ...inFolder('repeat-kit/repeat-x/') };
  expect((await accept(kit)).files).toContain('repeat-x/trial.yaml');
});

test('all problems at once, with places inside the zip, and nothing is written', async () => {
  const wrong = { ...TRIAL_FILES, 'counts.csv': 'sowing,day,germinated\ns01,5,~20\ns02,5,99\n' };
  const { code, out, files } = await accept(inFolder('oats/', wrong));
  expect(code).toBe(1);
  expect(out).toMatchInlineSnapshot(`
    "sent.zip/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "~20", which leaves the number open
      error: Write the number that was counted or read; put the doubt into a note.

    sent.zip/counts.csv:3:7 germinated: found 99, but 50 seeds were sown in "s02"
      error: Look up the count, and the number of seeds of sowing "s02" in sowings.csv.

    1 trial read: 2 errors, no warnings.

    The trial was not taken in.
    "
  `);
  expect(files).toEqual([]);
});

test('a trial that is there is never written over, however it is capitalised; nor is an old address taken', async () => {
  for (const name of ['leek', 'LEEK']) {
    const { code, out } = await accept(inFolder(`${name}/`));
    expect(code).toBe(1);
    expect(out).toContain(`sent.zip: the name "${name}" is taken by content/trials/leek`);
  }
  const aliased = { 'trials/leek/trial.yaml': `${TRIAL_FILES['trial.yaml']}aliases: [oats]\n` };
  expect((await accept(inFolder('oats/'), aliased)).out).toContain('the name "oats" is taken by content/trials/leek');
  const claiming = { ...TRIAL_FILES, 'trial.yaml': `${TRIAL_FILES['trial.yaml']}aliases: [leek]\n` };
  expect((await accept(inFolder('oats/', claiming))).out).toContain(
    'the old id "leek" already leads to the trial "leek"',
  );
});

test.each<[string, Zippable | Uint8Array, string]>([
  ['no zip', asBytes('PK? no'), 'It cannot be read as a zip; it may be damaged.'],
  ['no trial', { 'a/readme.txt': asBytes('x') }, 'It holds no trial.yaml, so there is no trial in it.'],
  ['two trials', { ...inFolder('a/'), ...inFolder('b/') }, 'It holds 2 trials; put each into a zip of its own.'],
  [
    'a name that climbs out',
    { ...inFolder('a/'), 'a/../../x.csv': asBytes('x') },
    'It holds a file whose name leads out of the folder; it is not unpacked.',
  ],
  [
    'a name from the root',
    { ...inFolder('a/'), '/etc/x.csv': asBytes('x') },
    'It holds a file whose name leads out of the folder; it is not unpacked.',
  ],
  [
    'a link',
    { ...inFolder('a/'), 'a/key.csv': [asBytes('/etc/passwd'), LINK] },
    'It holds a link, "a/key.csv"; put the file itself there.',
  ],
  [
    'far too much',
    { ...inFolder('a/'), 'a/photos/1.png': new Uint8Array(20_000_001) },
    'It unpacks to more than a trial can hold (500 files, 20 MB a file, 100 MB together).',
  ],
  [
    'an odd name',
    { ...inFolder('a/'), 'a/photos/con.png': asBytes('x') },
    'It holds a file named "photos/con.png", which not every computer can write; rename it.',
  ],
  [
    'names that differ in capitals',
    { ...inFolder('a/'), 'a/photos/1.png': asBytes('x'), 'a/photos/1.PNG': asBytes('x') },
    'It holds two files whose names differ only in capitals; rename one.',
  ],
  [
    'a folder that is no address',
    inFolder('my trial/'),
    'Its folder is named "my trial", which cannot be the address of a trial; use letters a to z, digits and hyphens.',
  ],
])('%s is refused with exit 2', async (_name, zip, message) => {
  // prettier-ignore
  expect(await accept(zip)).toEqual({ code: 2, out: '', err: `content/sent.zip: ${message}\n`, files: [] });
});

test('a zip with a password is refused', async () => {
  const zip = zipSync(inFolder('a/'));
  const entry = Buffer.from(zip).indexOf('PK\u0001\u0002', 0, 'latin1');
  zip[entry + 8] = (zip[entry + 8] ?? 0) | 1; // the first bit of its flags
  expect((await accept(zip)).err).toBe('content/sent.zip: It is locked with a password; zip the folder without one.\n');
});

test('called in a way it does not know: the usage, exit 2', async () => {
  let err = '';
  const terminal = { out: () => {}, err: (text: string) => (err += text), terminal: false };
  expect(await runAccept([], terminal)).toBe(2);
  expect(err).toMatch(/^Name one zip\.\n\nnpm run --silent accept -- <zip>/);
  expect(await runAccept(['/nowhere/x.zip', '--content', await temporaryContent()], terminal)).toBe(2);
  expect(err).toContain('/nowhere/x.zip: There is no such file.');
});
