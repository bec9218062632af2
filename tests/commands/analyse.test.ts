import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Analysis } from '../../src/analysis/analysis.ts';
import type { Pooled } from '../../src/analysis/pooled.ts';
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

const QUESTIONS = `jars:
  title: Jars for leek seed
  question: Does leek seed kept in a jar come up better?
  measure: germination
  matters: 5
  trials: [jar-or-packet, still-growing]
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
  writeFileSync(join(content, 'questions.yaml'), QUESTIONS);
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
    - caution: Leek ‘Blue Solaise 2024’: Seeds of Sealed jar with silica gel in the
      fridge were still coming up when counting stopped: 5 of 50 (10 of 100) between
      day 8 and day 14. A later count might read otherwise.
    - caution: Leek ‘Blue Solaise 2024’: Seeds of Paper packet in the shed were
      still coming up when counting stopped: 15 of 150 (10 of 100) between day 8 and
      day 14. A later count might read otherwise.
    - caution: Leek ‘Blue Solaise 2025’: Seeds of Sealed jar with silica gel in the
      fridge were still coming up when counting stopped: 15 of 150 (10 of 100)
      between day 8 and day 14. A later count might read otherwise.
    - caution: Leek ‘Blue Solaise 2025’: Seeds of Paper packet in the shed were
      still coming up when counting stopped: 15 of 150 (10 of 100) between day 8 and
      day 14. A later count might read otherwise.
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

test('a question: the answer, its trials, what limits it, what is not reported yet', async () => {
  for (const [index, up] of [
    [20, 24],
    [21, 22],
  ].entries()) {
    write(`repeat-${index}`, {
      'trial.yaml': trialYaml(`Repeat ${index + 1}`),
      'sowings.csv': 'sowing,lot,treatment,seeds\na,leek-2025,packet,25\nb,leek-2025,jar,25\n',
      'counts.csv': `sowing,day 14\na,${up[0]}\nb,${up[1]}\n`,
    });
  }
  const asked = QUESTIONS.replace('still-growing', 'still-growing, repeat-0, repeat-1');
  writeFileSync(join(content, 'questions.yaml'), asked);
  const { code, out, err } = await run('--question', 'jars');
  const json = await run('--question', 'jars', '--json');
  writeFileSync(join(content, 'questions.yaml'), QUESTIONS);
  for (const name of ['repeat-0', 'repeat-1']) rmSync(join(content, 'trials', name), { recursive: true });
  expect([code, err]).toEqual([0, '']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatchInlineSnapshot(`
    "Jars for leek seed (jars)
    =========================

    3 trials asked this. Results ran from 4 to 16 more per 100. Together, “Sealed
    jar with silica gel in the fridge” against “Paper packet in the shed”: 12 more
    per 100 (the data fit with just under 5 to 20 more per 100). A next repeat may
    fall anywhere from 52 fewer to 76 more per 100.

    Trials of this question
    -----------------------
      Jar or packet for leek seed (jar-or-packet)
        13 more per 100 (4 to 21 more per 100): a difference; weight 86 %
      Repeat 1 (repeat-0)
        16 more per 100 (13 fewer to 44 more per 100): cannot tell; weight 7 %
      Repeat 2 (repeat-1)
        4 more per 100 (25 fewer to 33 more per 100): cannot tell; weight 7 %

    What limits this
    ----------------
    - The trials differ no more than the luck of their own trays explains. So few
      trials could hardly show that gardens differ.
    - 2 of the 3 trials had one tray of a kind only. Alone such a trial cannot tell
      the treatment from the luck of that tray. Among trials by others that luck is
      part of what differs from trial to trial, so here it helps to answer; its
      seeds count as half as many.
    - The trials agree more closely than their own luck would have it; so the wider
      of two ranges is given.
    - The smallest difference that matters was named for the question, not agreed
      before the trials were counted.

    Not reported yet
    ----------------
    - Still growing: growing
    "
  `);
  const pooled = JSON.parse(json.out) as Pooled;
  expect([pooled.format, pooled.question, pooled.trials.length, pooled.verdict]).toEqual([
    'fairsown-pooled/1',
    'jars',
    3,
    'different',
  ]);
  expect((await run('--question', 'jars')).out.replaceAll('\n', ' ')).toContain(
    'The result was 13 more per 100. One trial is no pooled answer.',
  );
});

test('a question stops at errors in its trials, or leaves those out where the site says so', async () => {
  const site = readFileSync(join(content, 'site.yaml'), 'utf8');
  writeFileSync(join(content, 'questions.yaml'), QUESTIONS.replace('still-growing', 'broken'));
  write('broken', {
    'trial.yaml': trialYaml('Broken'),
    ...tables,
    'counts.csv': 'sowing,day,germinated\njar1,14,51\n',
  });
  const stopped = await run('--question', 'jars');
  writeFileSync(join(content, 'site.yaml'), `${site}on_problem: leave-out\n`);
  const left = await run('--question', 'jars');
  writeFileSync(join(content, 'site.yaml'), site);
  writeFileSync(join(content, 'questions.yaml'), QUESTIONS);
  rmSync(join(content, 'trials', 'broken'), { recursive: true });
  expect([stopped.code, stopped.out]).toEqual([1, '']);
  expect(stopped.err).toMatch(/trials\/broken\/counts\.csv:2/);
  expect(left.code).toBe(0);
  expect(left.out.replaceAll('\n  ', ' ')).toContain(
    '- broken: Its files have errors or do not pass the re-check, so it does not count.',
  );
});

test('a trial may be named by its folder', async () => {
  const { code, out } = await run(join(content, 'trials', 'jar-or-packet'));
  expect(code).toBe(0);
  expect(out).toBe((await run('jar-or-packet')).out);
});

test('a terminal is told how far reading and analysing are, a pipe is not', async () => {
  let err = '';
  const terminal = { out: () => {}, err: (text: string) => (err += text), terminal: true };
  await runAnalyse(['--all', '--content', content], terminal);
  expect(err).toContain('\r\u001b[K1 of 2: ');
  expect(err).toContain('\r\u001b[Kanalysing 2 of 2: ');
  expect(err.endsWith('\r\u001b[K')).toBe(true);
  expect((await run('--all')).err).toBe('');
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
  [[], 'Name a trial, or give --all or --question.'],
  [['--all', 'jar-or-packet'], 'Name trials, or give --all, or --question: one of them.'],
  [['--all', '--question', 'jar'], 'Name trials, or give --all, or --question: one of them.'],
  [['--question', 'jarrs'], 'Did you mean "jars"?'],
  [['jar-or-paket'], 'Did you mean "jar-or-packet"?'],
  [['--jason'], "Unknown option '--jason'"],
] as const)('called with %j it says what is wrong and ends with 2', async (args, message) => {
  const { code, out, err } = await run(...args);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(message);
  expect(err).toContain('npm run --silent analyse');
});
