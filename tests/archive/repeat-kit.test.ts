import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { repeatKit } from '../../src/archive/repeat-kit.ts';
import { repeatSowings } from '../../src/archive/repeat-sowings.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { readTrial } from '../../src/trial/read-trial.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeSowing, makeTrial } from '../support/make-trial.ts';
import { publishedDemo } from '../support/published-demo.ts';

const trials = await publishedDemo();
const kits = trials.flatMap(({ trial, files }) => {
  const zip = files.find(({ name }) => name === `repeat-${trial.id}.zip`);
  return zip ? [[trial.id, { trial, held: unzipSync(zip.bytes) }] as const] : [];
});

/** The trial's folder of a kit, as somebody unpacks it, with their name and seed filled in. */
function folderOf(id: string, held: Readonly<Record<string, Uint8Array>>): Map<string, Uint8Array> {
  const start = `repeat-kit/repeat-${id}/`;
  const inside = Object.entries(held).filter(([name]) => name.startsWith(start));
  return new Map(inside.map(([name, bytes]) => [name.slice(start.length), bytes]));
}
const read = (id: string, files: ReadonlyMap<string, Uint8Array>) =>
  readTrial({ id: `repeat-${id}`, folder: 'content/trials/repeat', files, site: DEFAULT_SITE });
const bytes = (value: unknown) => new TextEncoder().encode(stringify(value));
const text = (file: Uint8Array | undefined) => new TextDecoder().decode(file);

test('every trial has a kit, but for those counted blind that are not over and those without sowings yet', () => {
  const without = trials.map(({ trial }) => trial.id).filter((id) => !kits.some(([known]) => known === id));
  expect(without).toEqual(['leek-wet-start', 'peas-soaked-tunnel', 'spinach-fresh-or-old']);
});

test.each(kits)('%s: its kit asks for a name, and is a valid planned trial once filled in', (id, { trial, held }) => {
  const files = folderOf(id, held);
  const before = read(id, files);
  expect(before.trial).toBeNull();
  expect(new Set(before.problems.map(({ file }) => file.split('/').at(-1)))).toEqual(new Set(['people.yaml']));

  files.set('people.yaml', bytes({ me: { name: 'Ines Aldermoor' } }));
  const lots = Object.entries<object>(parse(text(files.get('lots.yaml'))));
  files.set('lots.yaml', bytes(Object.fromEntries(lots.map(([lot, known]) => [lot, { ...known, harvested: '2026' }]))));
  const { trial: again, problems } = read(id, files);
  expect(problems).toEqual([]);
  expect(again?.status).toBe('planned');
  expect(again?.repeats).toMatch(new RegExp(`/trials/${id}/$`));
  const kept = ({ question, treatments, outcomes, varies }: typeof trial) => ({
    question,
    treatments,
    outcomes,
    varies,
  });
  expect(again && kept(again)).toEqual(kept(trial));
  const sown = ({ sowings }: typeof trial) =>
    sowings.map(({ lot, treatment, seeds, block, batch, stored }) => JSON.stringify([lot, treatment, Math.round(seeds ?? 0), block, batch, stored])).sort(); // prettier-ignore
  expect(again && sown(again)).toEqual(sown(trial));
  expect(again?.counts.every(({ germinated }) => germinated === null)).toBe(true);
});

test.each(kits)('%s: the seed printed in the README draws the layout of its kit again', (id, { trial, held }) => {
  const readme = text(held['repeat-kit/README.txt']);
  const seed = /seed text “([^”]+)”/.exec(readme)?.[1] ?? '';
  const drawn = repeatSowings(trial.sowings, seed).map(({ id, lot, treatment }) => [id, lot, treatment ?? '']);
  const rows = text(folderOf(id, held).get('sowings.csv')).trim().split('\n').slice(1);
  expect(rows.map((row) => row.split(',').slice(0, 3))).toEqual(drawn);
});

test('trays that sowings share stay together, blocks stay apart, every place is drawn alike', () => {
  const sowings = ['a', 'b', 'c', 'd'].flatMap((tray) =>
    [1, 2].map((part) => makeSowing(`${tray}${part}`, tray < 'c' ? 'jar' : 'packet', { tray, block: 'shelf' })),
  );
  const first = Array.from({ length: 400 }, (_, seed) => repeatSowings(sowings, `seed ${seed}`));
  for (const drawn of first) {
    expect(drawn.map(({ tray }) => tray)).toEqual(['t1', 't1', 't2', 't2', 't3', 't3', 't4', 't4']);
    for (const at of [0, 2, 4, 6]) expect(drawn[at]?.treatment).toBe(drawn[at + 1]?.treatment);
  }
  const jars = first.filter(([sowing]) => sowing?.treatment === 'jar').length;
  expect(Math.abs(jars - 200)).toBeLessThan(40); // four standard deviations
});

test('a single container is warned of, in the words of the site; hostile labels stay text', () => {
  const trial = makeTrial({
    title: '=cmd: "x"\n- y',
    sowings: [makeSowing('=one', 'jar'), makeSowing('two', 'packet'), makeSowing('three', 'packet')],
  });
  const kit = repeatKit(trial, 'https://example.org/trials/test/', 'https://example.org', wordsFor('en'));
  expect(kit?.get('README.txt')).toContain('One container cannot tell a treatment from the container it was in.');
  expect(parse(kit?.get('repeat-test/trial.yaml') ?? '').title).toBe('=cmd: "x"\n- y');
  expect(repeatKit(trial, 'https://example.org/', 'https://example.org/', wordsFor('de'))?.get('README.txt')).toContain(
    'ausgeloste Anordnung',
  );
  const unknown = makeTrial({ sowings: [makeSowing('one', 'jar', { seeds: null })] });
  expect(repeatKit(unknown, 'https://example.org/', 'https://example.org/', wordsFor('en'))).toBeNull();
});
