import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, openSync, readdirSync, readFileSync, rmSync, statfsSync, statSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import fc from 'fast-check';
import { zipSync } from 'fflate';
import { expect, onTestFinished, test } from 'vitest';
import { plainly } from '../../src/commands/plainly.ts';
import { runAccept } from '../../src/commands/run-accept.ts';
import { runCheck } from '../../src/commands/run-check.ts';
import { runPlan } from '../../src/commands/run-plan.ts';
import { runSheets } from '../../src/commands/run-sheets.ts';
import { failingDisk } from '../support/failing-disk.ts';
import { SITE_FILES, TRIAL_FILES } from '../trial/trial-files.ts';

/* Every command that writes, stopped at any step of it: by a kill, by a full disk, by a disk that can only be read. */

const COMMANDS = ['plan', 'accept', 'check', 'sheets'] as const;
type Command = (typeof COMMANDS)[number];
const root = join(import.meta.dirname, '..', '..');
const world = { today: '2026-03-01', seed: 'a secret of some length', ask: null };
const RUN = {
  plan: (...[args, terminal]: Parameters<typeof runAccept>) => runPlan(args, terminal, world),
  accept: runAccept,
  check: (...[args, terminal]: Parameters<typeof runAccept>) => runCheck(args, terminal, () => '2026-07-02'),
  sheets: runSheets,
};
const DONE: Readonly<Record<Command, RegExp>> = {
  plan: /^(content\/trials\/radish|keys)\//,
  accept: /^content\/trials\/oats\//,
  check: /^content\/published\.yaml$/,
  sheets: /^content\/trials\/leek\/sheets\//,
};

const FILES: Readonly<Record<string, string | Uint8Array>> = {
  ...Object.fromEntries(Object.entries(SITE_FILES).map(([name, text]) => [`content/${name}`, text])),
  ...Object.fromEntries(Object.entries(TRIAL_FILES).map(([name, text]) => [`content/trials/leek/${name}`, text])),
  'content/trials/leek/trial.yaml': `${TRIAL_FILES['trial.yaml']}changes: [{ date: 2026-07-01, what: a count mended }]\n`,
  'content/published.yaml': `leek:\n  date: 2026-06-01\n  digest: ${'0'.repeat(64)}\n  version: 1\n`,
  'sent.zip': zipSync(
    Object.fromEntries(Object.entries(TRIAL_FILES).map(([name, text]) => [`oats/${name}`, Buffer.from(text)])),
    { mtime: new Date(2026, 0, 1) },
  ),
  'radish.yaml': `trial: radish
title: Radish under a lid
question: Do more come up under a lid?
varies: other
authors: [mara]
lots: [leek-2025]
treatments: [{ id: open, label: Open, control: true }, { id: lidded, label: Lidded }]
sowing: { container: a tray, treated: each-sowing }
scoring: { germinated: seed leaves visible, blind: yes, days: [3, 5] }
outcomes: [{ id: germination, measure: germination, day: 5 }]
each: 4
seeds: 25
seed: a seed of some length
`,
};

/** A content folder, with what the commands take, in a folder of its own or in the one given. */
async function laidOut(given?: string): Promise<string> {
  const folder = given ?? (await mkdtemp(join(tmpdir(), 'fairsown-interrupted-')));
  if (given === undefined) onTestFinished(() => rm(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(FILES)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), content);
  }
  return folder;
}

const argsOf = (command: Command, folder: string): readonly string[] => [
  ...{ plan: ['--from', join(folder, 'radish.yaml')], accept: [join(folder, 'sent.zip')], check: ['--record'], sheets: ['leek'] }[command],
  '--content',
  join(folder, 'content'),
]; // prettier-ignore

/** In this process. */
async function run(command: Command, folder: string): Promise<{ code: number; err: string }> {
  let err = '';
  const terminal = { out: () => {}, err: (text: string) => (err += text), terminal: false };
  const code = await plainly(RUN[command], argsOf(command, folder), terminal);
  return { code, err: err.replaceAll(relative(process.cwd(), folder), '…') };
}

/** In a process of its own, which can be killed. */
function started(
  command: Command,
  folder: string,
  set: Readonly<Record<string, string>> = {},
  stdout: 'pipe' | number = 'pipe',
) {
  const env = { ...process.env, NODE_COMPILE_CACHE: join(root, 'node_modules/.cache/compiled'), ...set };
  const disk = set.FAILING_DISK ? ['--import', join(root, 'tests/support/failing-disk.ts')] : [];
  const args = [...disk, join(root, `src/commands/${command}.ts`), ...argsOf(command, folder)];
  const child = spawn(process.execPath, args, { cwd: root, env, stdio: ['ignore', stdout, 'pipe'] });
  let err = '';
  child.stdout?.resume();
  child.stderr?.on('data', (text) => (err += text));
  const ended = new Promise<{ code: number | null; err: string }>((resolve) =>
    child.on('close', (code) => resolve({ code, err })),
  );
  return { child, ended };
}

/** Every file by its path, dates and digests left out; of a sheet its two ends. What is unfinished apart. */
function found(folder: string): { files: Map<string, string>; unfinished: string[] } {
  const all = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const isUnfinished = (name: string) => name.includes('.unfinished-');
  const names = all.filter((name) => !isUnfinished(name) && statSync(join(folder, name)).isFile());
  const files = new Map(names.map((name) => [name, valueOf(name, readFileSync(join(folder, name)))]));
  return { files, unfinished: all.filter(isUnfinished) };
}

function valueOf(name: string, bytes: Uint8Array | string): string {
  const text = Buffer.from(bytes as string).toString('latin1');
  if (name.endsWith('.pdf')) return `${text.slice(0, 5)}…${text.trimEnd().slice(-5)}`;
  return text.replaceAll(/\b\d{4}-\d\d-\d\d\b|\b[0-9a-f]{64}\b/g, '…');
}

const before = new Map(Object.entries(FILES).map(([name, content]) => [name, valueOf(name, content)]));

/** The same as before, or done: each file whole, and of a new trial all files or none. */
function expectWhole(command: Command, folder: string, done: ReadonlyMap<string, string>): void {
  const { files } = found(folder);
  for (const name of before.keys()) expect([...files.keys()]).toContain(name);
  for (const [name, value] of files) {
    const either = [before.get(name), DONE[command].test(name) ? done.get(name) : undefined];
    expect(either.filter((one) => one !== undefined), name).toContain(value); // prettier-ignore
  }
  const trial = (names: Iterable<string>) =>
    [...names].filter((name) => /trials\/(radish|oats)\//.test(name)).toSorted();
  if (trial(files.keys()).length === 0) return;
  expect(trial(files.keys())).toEqual(trial(done.keys()));
  expect([...files.keys()]).toEqual(
    expect.arrayContaining([...done.keys()].filter((name) => name.startsWith('keys/'))),
  );
}

async function doneBy(command: Command): Promise<ReadonlyMap<string, string>> {
  const folder = await laidOut();
  expect(await run(command, folder)).toEqual({ code: 0, err: '' });
  const { files, unfinished } = found(folder);
  expect(unfinished).toEqual([]);
  expect([...files.keys()].some((name) => DONE[command].test(name))).toBe(true);
  return files;
}

const A_SENTENCE = /^(…|\.\.|\/)\S* could not be written: [^\n]+ \([A-Z]+\)\. Nothing that was there has changed\.\n$/;

test.each(COMMANDS)(
  '%s on a disk that fills at a step: as before, a sentence, nothing left behind',
  async (command) => {
    const done = await doneBy(command);
    for (const at of await stepsOf(command)) {
      const folder = await laidOut();
      const disk = failingDisk(at, 'ENOSPC');
      const { code, err } = await run(command, folder).finally(disk.mend);
      expectWhole(command, folder, done);
      expect(found(folder).unfinished, `step ${at}`).toEqual([]);
      // What is left to do once all is written is to clear up, which frees room.
      if (code === 0) expect(found(folder).files, `step ${at}`).toEqual(done);
      else expect({ code, err }).toEqual({ code: 1, err: expect.stringMatching(A_SENTENCE) });
    }
  },
);

test.each(COMMANDS)('%s killed at a step: as before or done, and done when it is called again', async (command) => {
  const done = await doneBy(command);
  await inTwos(await stepsOf(command), async (at) => {
    const folder = await laidOut();
    const { child, ended } = started(command, folder, { FAILING_DISK: `${at} KILL` });
    await ended;
    expect(child.signalCode, `step ${at}`).toBe('SIGKILL');
    expectWhole(command, folder, done);
    await expectDoneAgain(command, folder, done);
  });
});

test('any of them killed at any moment', async () => {
  const done = new Map<Command, ReadonlyMap<string, string>>();
  for (const command of COMMANDS) done.set(command, await doneBy(command));
  const moments = fc.sample(fc.tuple(fc.constantFrom(...COMMANDS), fc.nat(600)), { seed: 20261129, numRuns: 16 });
  await inTwos(moments, async ([command, milliseconds]) => {
    const folder = await laidOut();
    const { child, ended } = started(command, folder);
    setTimeout(() => child.kill('SIGKILL'), milliseconds);
    await ended;
    expectWhole(command, folder, done.get(command) ?? new Map());
    await expectDoneAgain(command, folder, done.get(command) ?? new Map());
  });
});

/** Done by the next call, which clears up, unless all or the key of a trial was there already. */
async function expectDoneAgain(command: Command, folder: string, done: ReadonlyMap<string, string>): Promise<void> {
  const was = found(folder).files;
  const { code, err } = await run(command, folder);
  const { files, unfinished } = found(folder);
  if (code !== 0) {
    expect(files).toEqual(was);
    expect([...was.keys()].some((name) => /trials\/oats|keys\//.test(name))).toBe(true);
    expect(err).toMatch(command === 'plan' ? / is there already and stays as it is; nothing was written/ : /^$/);
    return;
  }
  expect(files).toEqual(done);
  if (JSON.stringify([...was]) !== JSON.stringify([...done])) expect(unfinished).toEqual([]);
}

/** Steps of writing that a command takes, counted from 1: the first, the last, and some of those between, which repeat. */
async function stepsOf(command: Command): Promise<number[]> {
  const folder = await laidOut();
  const disk = failingDisk(Number.POSITIVE_INFINITY, 'ENOSPC');
  await run(command, folder).finally(disk.mend);
  const steps = disk.taken();
  expect(steps).toBeGreaterThan(4);
  const all = Array.from({ length: steps }, (_, index) => index + 1);
  return all.filter((at) => at <= 5 || at % 7 === 0 || (at > steps - 14 && (steps - at) % 2 === 0));
}

/** Two at once, as many as any machine has room for. */
async function inTwos<T>(items: readonly T[], use: (item: T) => Promise<void>): Promise<void> {
  const left = [...items];
  const take = async () => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await use(item);
  };
  await Promise.all([take(), take()]);
}

test.each<[Command, string]>([
  ['plan', 'content/trials'],
  ['plan', 'keys'],
  ['sheets', 'content/trials/leek/sheets'],
])(
  '%s where a file stands in place of the folder %s: a sentence with the path, no stack trace',
  async (command, path) => {
    const folder = await laidOut();
    if (path === 'content/trials') await rm(join(folder, path), { recursive: true });
    await writeFile(join(folder, path), 'a file');
    const was = found(folder).files;
    const { code, err } = await started(command, folder).ended;
    expect(code).toBe(1);
    expect(err).toMatch(A_SENTENCE);
    expect(err).toContain('there is a file where a folder should be (ENOTDIR)');
    expect(found(folder)).toEqual({ files: was, unfinished: [] });
  },
);

/** A disk in memory; null where this machine or this user may not mount one. */
function smallDisk(): string | null {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-disk-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', folder]).status !== 0) return null;
  onTestFinished(() => void spawnSync('umount', ['-l', folder]));
  return folder;
}

test.for(COMMANDS)('%s on a small disk that is full, and on one that can only be read', async (command, { skip }) => {
  const done = await doneBy(command);
  for (const room of [0, 4096, 8192, 'read only'] as const) {
    const disk = smallDisk();
    if (disk === null) return skip('it takes the right to mount a disk');
    await laidOut(disk);
    if (room === 'read only') expect(spawnSync('mount', ['-o', 'remount,ro', disk]).status).toBe(0);
    else {
      const { bavail, bsize } = statfsSync(disk);
      await writeFile(join(disk, 'filling'), new Uint8Array(bavail * bsize - room));
    }
    const { code, err } = await run(command, disk);
    await rm(join(disk, 'filling'), { force: true });
    expectWhole(command, disk, done);
    if (code === 0 && room !== 0) continue;
    expect({ code, err }).toEqual({ code: 1, err: expect.stringMatching(A_SENTENCE) });
    expect(err).toContain(room === 'read only' ? 'the disk can only be read (EROFS)' : 'the disk is full (ENOSPC)');
    expect(found(disk)).toEqual({ files: before, unfinished: [] });
  }
});

test('where what a command says cannot be written: one sentence and exit 1; where nobody listens any more: exit 1', async () => {
  const folder = await laidOut();
  const deaf = started('check', folder);
  deaf.child.stdout?.destroy();
  expect(await deaf.ended).toEqual({ code: 1, err: '' });
  if (!existsSync('/dev/full')) return;
  const full = started('check', folder, {}, openSync('/dev/full', 'w'));
  expect(await full.ended).toEqual({
    code: 1,
    err: 'What the command says could not be written: the disk is full (ENOSPC).\n',
  });
});
