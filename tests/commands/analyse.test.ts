import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Analysis } from '../../src/analysis/analysis.ts';
import { runAnalyse } from '../../src/commands/run-analyse.ts';

const content = mkdtempSync(join(tmpdir(), 'fairsown-'));

const trialYaml = (title: string, status = 'finished') => `title: ${title}
question: Does leek seed kept in a jar come up better?
status: ${status}
authors: [mara]
varies: storage
sown: 2026-04-04
fixed_beforehand: 2026-04-01
interests: none
lots: [leek-2025]
treatments:
  - { id: packet, label: Paper packet in the shed, control: true }
  - { id: jar, label: Sealed jar with silica gel in the fridge }
sowing: { container: a tray, assignment: random, treated: each-sowing }
scoring: { germinated: loop visible, blind: yes }
outcomes:
  - { id: germination, measure: germination, day: 14, matters: 5 }
`;

function write(trial: string, files: Readonly<Record<string, string>>): void {
  mkdirSync(join(content, 'trials', trial), { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(content, 'trials', trial, name), text);
}

const sowings = ['packet', 'jar'].flatMap((treatment) => [1, 2, 3, 4].map((n) => `${treatment}${n},leek-2025,${treatment},50`)); // prettier-ignore
const counts = [40, 42, 38, 44, 45, 48, 47, 49].map((count, index) => `${sowings[index]?.split(',')[0]},14,${count}`);
const tables = {
  'sowings.csv': ['sowing,lot,treatment,seeds', ...sowings].join('\n'),
  'counts.csv': ['sowing,day,germinated', ...counts].join('\n'),
};

beforeAll(() => {
  mkdirSync(join(content, 'trials'), { recursive: true });
  writeFileSync(
    join(content, 'site.yaml'),
    'name: A garden\nbase: https://example.org\nlanguage: en\nlicence: CC-BY-4.0\n',
  );
  writeFileSync(join(content, 'people.yaml'), 'mara: { name: Mara }\n');
  writeFileSync(
    join(content, 'lots.yaml'),
    ['leek-2025', 'leek-2024'].map((id) => `${id}: { crop: leek, species: Allium porrum, cultivar: Blue Solaise ${id.slice(-4)} }\n`).join(''), // prettier-ignore
  );
  write('jar-or-packet', { 'trial.yaml': trialYaml('Jar or packet for leek seed'), ...tables });
  write('still-growing', { 'trial.yaml': trialYaml('Still growing', 'growing'), ...tables });
});
afterAll(() => rmSync(content, { recursive: true }));

async function run(...args: string[]) {
  let [out, err] = ['', ''];
  const code = await runAnalyse([...args, '--content', content], {
    out: (text) => (out += text),
    err: (text) => (err += text),
    terminal: false,
  });
  return { code, out, err };
}

test('a table for a terminal of 80 columns, and the caveats below', async () => {
  const { code, out, err } = await run('jar-or-packet');
  expect([code, err]).toEqual([0, '']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatchInlineSnapshot(`
    "Jar or packet for leek seed (jar-or-packet)
    ===========================================

    Came up by day 14
    -----------------

    Leek ‘Blue Solaise 2025’
      Treatment                                 Units    Estimate  95 % interval
      Paper packet in the shed                  4 trays  82.0 %    74.1 % to 87.9 %
      Sealed jar with silica gel in the fridge  4 trays  94.5 %    88.8 % to 97.4 %
      Sealed jar with silica gel in the fridge against Paper packet in the shed
        13 more per 100 (4 to 21 more per 100): came up more

    - Only one lot of leek was sown. Another harvest, another age or another crop
      may behave otherwise.
    - The question is about keeping seed, but it was sown straight after the
      treatment. How well it keeps, only a later sowing can show.
    - 47 of 400 seeds did not come up. Whether they were dead or only resting was
      not looked at.
    "
  `);
});

test('two lots, a speed and a single tray: each with what limits it', async () => {
  const rows = ['leek-2025', 'leek-2024'].flatMap(
    (lot) =>
    ['packet', 'jar'].flatMap((treatment) => [1, 2, 3].map((n) => ({ id: `${lot.slice(-2)}${treatment}${n}`, lot, treatment }))), // prettier-ignore
  );
  const kept = rows.filter(({ id }) => !['24jar2', '24jar3'].includes(id));
  write('two-lots', {
    'trial.yaml': trialYaml('Two lots')
      .replace('[leek-2025]', '[leek-2025, leek-2024]')
      .replace('assignment: random', 'assignment: by-hand')
      .concat('  - { id: speed, measure: t50, matters: 1 }\n'),
    'sowings.csv': ['sowing,lot,treatment,seeds', ...kept.map(({ id, lot, treatment }) => `${id},${lot},${treatment},50`)].join('\n'), // prettier-ignore
    'counts.csv': [
      'sowing,day 5,day 6,day 8,day 14',
      ...kept.map(({ id, treatment }, index) => `${id},${treatment === 'jar' ? 5 : 2},${15 + index},${25 + index},${30 + index}`), // prettier-ignore
    ].join('\n'),
  });
  const { out, err } = await run('two-lots');
  rmSync(join(content, 'trials', 'two-lots'), { recursive: true });
  expect(err).toBe('');
  expect(out).toMatchInlineSnapshot(`
    "Two lots (two-lots)
    ===================

    Came up by day 14
    -----------------

    Leek ‘Blue Solaise 2025’
      Treatment                                 Units    Estimate  95 % interval
      Paper packet in the shed                  3 trays  62 %      52 % to 71 %
      Sealed jar with silica gel in the fridge  3 trays  68 %      58 % to 77 %
      Sealed jar with silica gel in the fridge against Paper packet in the shed,
      Leek ‘Blue Solaise 2025’
        6 more per 100 (8 fewer to 20 more per 100): not settled

    Leek ‘Blue Solaise 2024’
      Treatment                                 Units    Estimate  95 % interval
      Paper packet in the shed                  3 trays  74 %      61 % to 84 %
      Sealed jar with silica gel in the fridge  1 tray   78 %      65 % to 87 %
      Sealed jar with silica gel in the fridge against Paper packet in the shed,
      Leek ‘Blue Solaise 2024’
        4 more per 100 (11 fewer to 16 more per 100), seed luck only: cannot tell

    Day by which half were up
    -------------------------

    Leek ‘Blue Solaise 2025’
      Treatment                              Units    Estimate  95 % interval
      Paper packet in the shed               3 trays  6.0 days  5.9 days to 6.0 days
      Sealed jar with silica gel in the      3 trays  5.9 days  5.8 days to 5.9 days
      fridge
      Sealed jar with silica gel in the fridge against Paper packet in the shed,
      Leek ‘Blue Solaise 2025’
        0.1 days earlier (less than 0.1 to 0.2 days earlier): probably too small to
        matter

    Leek ‘Blue Solaise 2024’
      Treatment                              Units    Estimate  95 % interval
      Paper packet in the shed               3 trays  5.8 days  5.8 days to 5.9 days
      Sealed jar with silica gel in the      1 tray   5.8 days
      fridge
      Sealed jar with silica gel in the fridge against Paper packet in the shed,
      Leek ‘Blue Solaise 2024’
        0.1 days earlier: cannot tell

    - serious: Leek ‘Blue Solaise 2024’: There was only one tray of Sealed jar with
      silica gel in the fridge. Trays differ by luck even when they are treated
      alike, and with one of a kind that luck cannot be told from the treatment.
    - caution: The trays were placed by hand, not by lot. A better place may then
      have gone to one kind more often.
    - caution: Leek ‘Blue Solaise 2024’: Seeds were still coming up when counting
      stopped: 5 of 50 (10 of 100) between day 8 and day 14. A later count might
      read otherwise.
    - caution: Leek ‘Blue Solaise 2024’: Seeds were still coming up when counting
      stopped: 15 of 150 (10 of 100) between day 8 and day 14. A later count might
      read otherwise.
    - caution: Leek ‘Blue Solaise 2025’: Seeds were still coming up when counting
      stopped: 15 of 150 (10 of 100) between day 8 and day 14. A later count might
      read otherwise.
    - Leek ‘Blue Solaise 2025’: There were only 3 trays of each. So few show a
      difference only where it is large.
    - The question is about keeping seed, but it was sown straight after the
      treatment. How well it keeps, only a later sowing can show.
    - Leek ‘Blue Solaise 2024’: 50 of 200 seeds did not come up. Whether they were
      dead or only resting was not looked at.
    - Leek ‘Blue Solaise 2025’: 105 of 300 seeds did not come up. Whether they were
      dead or only resting was not looked at.
    "
  `);
});

test('a growing trial says that nothing is compared yet', async () => {
  expect((await run('still-growing')).out).toMatchInlineSnapshot(`
    "Still growing (still-growing)
    =============================

    Counting goes on. Treatments are not compared until it is over.
    "
  `);
});

test('one trial as JSON is an object; several, and all, an array', async () => {
  const one = JSON.parse((await run('jar-or-packet', '--json')).out) as Analysis;
  expect([one.format, one.trial, one.results[0]?.comparisons[0]?.verdict]).toEqual([
    'fairsown-analysis/1',
    'jar-or-packet',
    'different',
  ]);
  expect(one.caveats.every(({ text }) => text !== '')).toBe(true);
  const all = JSON.parse((await run('--all', '--json')).out) as Analysis[];
  expect(all.map(({ trial, results }) => [trial, results.length])).toEqual([
    ['jar-or-packet', 1],
    ['still-growing', 0],
  ]);
  expect(JSON.parse((await run('jar-or-packet', 'still-growing', '--json')).out)).toEqual(all);
});

test('a trial may be named by its folder', async () => {
  const { code, out } = await run(join(content, 'trials', 'jar-or-packet'));
  expect(code).toBe(0);
  expect(out).toBe((await run('jar-or-packet')).out);
});

test('mistakes in the files are printed as check prints them, and nothing is analysed', async () => {
  write('broken', {
    'trial.yaml': trialYaml('Broken'),
    ...tables,
    'counts.csv': 'sowing,day,germinated\njar1,14,51\n',
  });
  const { code, out, err } = await run('broken', 'jar-or-packet');
  rmSync(join(content, 'trials', 'broken'), { recursive: true });
  expect([code, out]).toEqual([1, '']);
  expect(err).toMatch(/trials\/broken\/counts\.csv:2/);
});

test.each([
  [[], 'Name a trial, or give --all.'],
  [['--all', 'jar-or-packet'], 'Name trials or give --all, not both.'],
  [['--question', 'jar'], 'Pooled questions (--question) are not in this version.'],
  [['jar-or-paket'], 'Did you mean "jar-or-packet"?'],
  [['--jason'], "Unknown option '--jason'"],
] as const)('called with %j it says what is wrong and ends with 2', async (args, message) => {
  const { code, out, err } = await run(...args);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(message);
  expect(err).toContain('npm run --silent analyse');
});
