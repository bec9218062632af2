import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { publishedDemo } from '../support/published-demo.ts';

const trials = await publishedDemo();
const named = trials.map((published) => [published.trial.id, published] as const);

test.each(named)('%s: sha256sum accepts SHA256SUMS in a clean folder, and refuses a changed file', (_id, { files }) => {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-data-'));
  for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes);
  const check = () => spawnSync('sha256sum', ['-c', '--strict', 'SHA256SUMS'], { cwd: folder, encoding: 'utf8' });
  const { status, stdout } = check();
  expect(status).toBe(0);
  expect(stdout.match(/: OK$/gm)).toHaveLength(files.length - 2); // not itself and not the zip that holds it
  writeFileSync(join(folder, 'trial.yaml'), 'title: another');
  expect(check().status).not.toBe(0);
  rmSync(folder, { recursive: true });
});

test.each(named)('%s: the zip holds every other file, byte for byte', (id, { files }) => {
  const zip = files.find(({ name }) => name === `${id}.zip`);
  const held = unzipSync(zip?.bytes ?? new Uint8Array());
  const others = files.filter((file) => file !== zip);
  expect(Object.keys(held)).toEqual(others.map(({ name }) => `${id}/${name}`));
  for (const { name, bytes } of others) expect(Buffer.from(held[`${id}/${name}`] ?? []).equals(bytes), name).toBe(true);
});

test('every file has the same bytes at every build, in any time zone', async () => {
  const zone = process.env.TZ;
  process.env.TZ = 'Pacific/Auckland';
  const again = await publishedDemo();
  process.env.TZ = zone;
  const digests = (all: typeof trials) => all.map(({ files }) => files.map(({ name, sha256 }) => [name, sha256]));
  expect(digests(again)).toEqual(digests(trials));
});

test.each(named)(
  '%s: the long tables hold every count and measurement that was read',
  (_id, { trial, files, text }) => {
    const rows = (name: string): Record<string, string>[] =>
      files.some((file) => file.name === name) ? parse(text(name), { columns: true, bom: true }) : [];
    const counts = rows('counts-long.csv');
    expect(counts.map(({ sowing, day, germinated }) => [sowing, Number(day), germinated])).toEqual(
      trial.counts.map(({ sowing, day, germinated }) => [sowing, day, germinated === null ? '' : String(germinated)]),
    );
    const measured = rows('measurements-long.csv');
    expect(measured).toHaveLength(trial.measurements.length * trial.traits.length);
    const total = (values: readonly (number | null | undefined)[]) => values.reduce<number>((sum, value) => sum + (value ?? 0), 0); // prettier-ignore
    expect(total(measured.map(({ value }) => Number(value)))).toBeCloseTo(
      total(trial.measurements.flatMap(({ values }) => Object.values(values))),
      6,
    );
    for (const { date } of [...counts, ...measured]) expect(date).toMatch(trial.sown ? /^\d{4}-\d\d-\d\d$/ : /^$/);
    expect(rows('counts-long-spreadsheet.csv')).toEqual(counts);
    for (const row of rows('dictionary.csv')) expect(row.meaning).toMatch(/\.$/);
  },
);

test('the day of a check and its date agree, for a sowing with its own day of sowing too', () => {
  const storage = trials.find(({ trial }) => trial.id === 'leek-shed-or-fridge');
  const [head, first] = storage?.text('counts-long.csv').split('\n') ?? [];
  expect(head).toBe(
    'sowing,lot,treatment,stored,block,tray,batch,seeds,date,day,germinated,abnormal,hard,fresh,dead,scorer,note',
  );
  expect(first).toBe('y0-1,leek-2022,,0,,,,50,2023-11-10,6,0,,,,,,');
});

test('no table of a trial that is counted blind tells which tray had which treatment', () => {
  const growing = trials.filter(({ trial }) => trial.id === 'leek-wet-start');
  expect(growing).toHaveLength(1);
  for (const { trial, text } of growing) {
    expect(trial.status).toBe('growing');
    const rows: Record<string, string>[] = parse(text('counts-long.csv'), { columns: true });
    expect(new Set(rows.map(({ treatment }) => treatment))).toEqual(new Set(['']));
  }
});
