import { spawnSync } from 'node:child_process';
import { relative } from 'node:path';
import { expect, test } from 'vitest';
import { runCheck } from '../../src/commands/run-check.ts';
import { temporaryContent } from '../files/temporary-content.ts';
import { SITE_FILES, type TextFiles } from '../trial/trial-files.ts';

async function check(args: readonly string[], changed: TextFiles = {}, terminal = false) {
  const folder = await temporaryContent(changed);
  const shownFolder = relative(process.cwd(), folder);
  let [out, err] = ['', ''];
  const code = await runCheck([...args, '--content', folder], {
    out: (text) => (out += text),
    err: (text) => (err += text),
    terminal,
  });
  return { code, out: out.replaceAll(shownFolder, 'content'), err: err.replaceAll(shownFolder, 'content') };
}

const WRONG = {
  'trials/leek/counts.csv': 'sowing,day,germinated,colour\ns01,5,52,x\ns02,5,,x\ns03,5,1,x\ns04,5,1,x\n',
};
const DOUBTFUL = { 'trials/leek/extra.txt': 'x' };

test('nothing wrong: a closing line, exit 0', async () => {
  expect(await check([])).toEqual({ code: 0, out: '1 trial read: no errors, no warnings.\n', err: '' });
});

test('one problem a block, in file order, with a closing count; exit 1', async () => {
  const { code, out, err } = await check([], WRONG);
  expect(code).toBe(1);
  expect(err).toBe('');
  expect(out).toMatchInlineSnapshot(`
    "content/trials/leek/counts.csv:1:23 colour: the column "colour" is not known here and was not read
      warning: Known here: date, abnormal, hard, fresh, dead, scorer, note.

    content/trials/leek/counts.csv:2:7 germinated: found 52, but 50 seeds were sown in "s01"
      error: Look up the count, and the number of seeds of sowing "s01" in sowings.csv.

    content/trials/leek/counts.csv:3:7 germinated: the cell is empty and was read as not checked, which is not zero
      notice: Write 0 where nothing had come up, or NC where it was not checked.

    1 trial read: 1 error, 1 warning, 1 notice.
    "
  `);
});

test('warnings end with 0, with --strict 1', async () => {
  expect(await check([], DOUBTFUL)).toMatchObject({ code: 0, out: expect.stringContaining('no errors, 1 warning.') });
  expect(await check(['--strict'], DOUBTFUL)).toMatchObject({ code: 1 });
});

test('--json prints fairsown-check/1 and nothing else', async () => {
  const { code, out } = await check(['--json'], WRONG);
  const json = JSON.parse(out);
  expect(code).toBe(1);
  expect(Object.keys(json)).toEqual(['format', 'problems', 'errors', 'warnings', 'left_out']);
  expect(json).toMatchObject({ format: 'fairsown-check/1', errors: 1, warnings: 1 });
  expect(json.problems.find(({ level }: { level: string }) => level === 'error')).toEqual({
    file: 'content/trials/leek/counts.csv',
    line: 2,
    column: 7,
    cell: 'C2',
    field: 'germinated',
    level: 'error',
    rule: 'count-above-seeds',
    message: 'found 52, but 50 seeds were sown in "s01"',
    remedy: 'Look up the count, and the number of seeds of sowing "s01" in sowings.csv.',
  });
});

test('where the site leaves broken trials out, it says which', async () => {
  const site = { 'site.yaml': `${SITE_FILES['site.yaml']}on_problem: leave-out\n` };
  const { code, out } = await check(['--json'], { ...WRONG, ...site });
  expect([code, JSON.parse(out).left_out]).toEqual([1, ['leek']]);
  expect((await check([], { ...WRONG, ...site })).out).toMatch(/\n\nThe site leaves out: leek\.\n$/);
  expect(JSON.parse((await check(['--json'], WRONG)).out).left_out).toEqual([]);
});

test('only the trials named, by id or by folder, with the site files', async () => {
  const two = { ...WRONG, 'trials/other/trial.yaml': 'title: x\n' };
  expect((await check(['other'], two)).out).not.toContain('counts.csv');
  expect((await check(['leek'], two)).out).toContain('1 trial read: 1 error, 1 warning, 1 notice.');
  expect((await check(['other', 'leek'], two)).out).toContain('2 trials read: 6 errors, 1 warning, 1 notice.');
  const elsewhere = await temporaryContent();
  expect(await check([`${elsewhere}/trials/leek`])).toMatchObject({ code: 0 });
});

test('called in a way it does not know: a reason, the usage, exit 2', async () => {
  const unknown = await check(['--recrd']);
  expect(unknown).toMatchObject({ code: 2, out: '' });
  expect(unknown.err).toMatch(/^Unknown option '--recrd'\n\nnpm run --silent check -- /);
  expect((await check(['lek'])).err).toMatch(/^There is no trial "lek" in content\/trials. Did you mean "leek"\?\n/);
  expect(await check(['--help'])).toMatchObject({ code: 0, err: '' });
});

test('progress is for a terminal only', async () => {
  expect((await check([], {}, true)).err).toContain('1 of 1: leek');
});

test('the command itself runs without a bundler and reads FAIRSOWN_CONTENT', async () => {
  const folder = await temporaryContent(DOUBTFUL);
  const run = (...args: readonly string[]) =>
    spawnSync(process.execPath, ['src/commands/check.ts', ...args], {
      encoding: 'utf8',
      env: { ...process.env, FAIRSOWN_CONTENT: folder },
    });
  const found = run('--strict');
  expect(found.stderr).toBe('');
  expect(found.stdout).toContain('trials/leek/extra.txt: nothing reads a file of this name');
  expect(found.status).toBe(1);
  expect(run('--content', `${folder}/nowhere`).status).toBe(2);
});

const SECOND = 'sowing,day 5,day 8\ns04,14,44\ns01,10,40\ns02,12,54\ns03,9,NC\n';

test('--against lists the cells in which two typings differ, whatever their layout; exit 1', async () => {
  const files = { 'second.csv': SECOND };
  const folder = await temporaryContent(files);
  const { code, out } = await check(['leek', '--against', `${folder}/second.csv`], files);
  const second = relative(process.cwd(), folder);
  expect(code).toBe(1);
  expect(out.replaceAll(second, 'elsewhere').replaceAll(folder, 'elsewhere')).toMatchInlineSnapshot(`
    "content/trials/leek/counts.csv:7:7 germinated: found 45 for sowing "s02" on day 8, but elsewhere/second.csv:4 has 54
      error: Look at the sheet of that day, and correct whichever was mistyped.

    content/trials/leek/counts.csv:8:7 germinated: found 38 for sowing "s03" on day 8, but elsewhere/second.csv:5 has no number
      error: Look at the sheet of that day, and correct whichever was mistyped.

    1 trial read: 2 errors, no warnings.
    8 counts compared with elsewhere/second.csv: 2 differ.
    "
  `);
});

test('--against a file that says the same: exit 0', async () => {
  const folder = await temporaryContent({ 'second.csv': SECOND.replace('54', '45').replace('NC', '38') });
  const { code, out } = await check(['leek', '--against', `${folder}/second.csv`]);
  expect(code).toBe(0);
  expect(out).toMatch(/no errors, no warnings\.\n8 counts compared with .+second\.csv: none differ\.\n$/);
});

test('--against finds the slip that made counts.csv wrong, and a row that one typing lacks', async () => {
  const counts = 'sowing,day,germinated\ns01,5,99\ns02,5,12\n';
  const folder = await temporaryContent({ 'second.csv': 'sowing,day,germinated\ns01,5,9\ns03,5,7\n' });
  const { code, out } = await check(['leek', '--against', `${folder}/second.csv`], {
    'trials/leek/counts.csv': counts,
  });
  expect(code).toBe(1);
  expect(out).toContain('found 99, but 50 seeds were sown in "s01"');
  expect(out).toMatch(/counts\.csv:2:7 germinated: found 99 for sowing "s01" on day 5, but .+second\.csv:2 has 9\n/);
  expect(out).toMatch(/counts\.csv:3:7 germinated: found 12 for sowing "s02" on day 5, but .+second\.csv has none\n/);
  expect(out).toMatch(/second\.csv:3:7 germinated: found 7 for sowing "s03" on day 5, but .+counts\.csv has none\n/);
});

test('--against reads the second file as strictly as the first', async () => {
  const folder = await temporaryContent({ 'second.csv': 'sowing,day,germinated\ns01,5,~10\ns99,5,1\n' });
  const { code, out } = await check(['leek', '--against', `${folder}/second.csv`]);
  expect(code).toBe(1);
  expect(out).toMatch(/second\.csv:2:\d+ germinated: /);
  expect(out).toMatch(/second\.csv:3:1 sowing: /);
});

test('--against needs one trial and a file', async () => {
  expect((await check(['--against', 'x.csv'], { 'trials/two/trial.yaml': 'title: x\n' })).err).toMatch(
    /^--against needs one trial/,
  );
  expect(await check(['leek', '--against', '/nowhere/x.csv'])).toMatchObject({ code: 2 });
});
