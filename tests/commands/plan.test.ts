import { mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { analyse } from '../../src/analysis/analyse.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import type { Ask } from '../../src/commands/ask-plan.ts';
import { runAnalyse } from '../../src/commands/run-analyse.ts';
import { runCheck } from '../../src/commands/run-check.ts';
import { runPlan } from '../../src/commands/run-plan.ts';
import { runRecheck } from '../../src/commands/run-recheck.ts';
import { publishedFiles } from '../../src/files/published-files.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { temporaryContent } from '../files/temporary-content.ts';

const RADISH = [
  '--title',
  'Radish under a lid',
  '--question',
  'Do more come up under a lid?',
  '--varies',
  'other',
  '--control',
  'Open',
  '--treatment',
  'Lidded',
  '--lot',
  'leek-2025',
  '--author',
  'mara',
  '--container',
  'a tray',
  '--treated',
  'each-sowing',
  '--germinated',
  'seed leaves visible',
  '--days',
  '3,5,8',
  '--matters',
  '15',
  '--each',
  '4',
  '--seeds',
  '25',
];

async function plan(args: readonly string[], world: { ask?: Ask; seed?: string; content?: string } = {}) {
  const content = world.content ?? (await temporaryContent());
  const keys = join(dirname(content), `${content.split('/').at(-1)}-keys`);
  onTestFinished(() => rm(keys, { recursive: true, force: true }));
  const key = join(keys, 'key.csv');
  let [out, err] = ['', ''];
  const terminal = { out: (text: string) => (out += text), err: (text: string) => (err += text), terminal: false };
  const code = await runPlan([...args, '--content', content, '--key', key], terminal, {
    today: '2026-03-01',
    seed: world.seed ?? 'a secret of some length',
    ask: world.ask ?? null,
  });
  const read = (name: string) => readFile(join(content, 'trials', 'radish', name), 'utf8');
  return { code, out, err, content, key, read };
}

const blind = ['radish', ...RADISH, '--blind', 'yes'];

test('writes a trial without a problem: files, sheets, a frozen plan whose digest holds', async () => {
  const { code, out, err, content, read } = await plan(['radish', ...RADISH, '--blind', 'no']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const folder = join(content, 'trials', 'radish');
  expect(await readdir(folder)).toEqual(['counts.csv', 'plan.yaml', 'sheets', 'sowings.csv', 'trial.yaml']);
  expect(await readdir(join(folder, 'sheets'))).toContain('counting-sheet.pdf');
  const { trial, problems } = await readTrialFolder(folder);
  expect(problems).toEqual([]);
  expect(trial?.plan?.digest).toBe(trial?.plan?.computedDigest);
  expect(trial && analyse(trial).plan).toEqual({ fixed: '2026-03-01', changes: [] });
  expect(trial?.sowings.map(({ treatment }) => treatment).toSorted()).toEqual([...Array(4).fill('lidded'), ...Array(4).fill('open')]); // prettier-ignore
  expect((await read('counts.csv')).split('\n').slice(0, 3)).toEqual(['sowing,day,germinated,scorer,note', 's01,3,,,', 's02,3,,,']); // prettier-ignore
  expect((await read('counts.csv')).trim().split('\n').length).toBe(1 + 3 * 8);
  expect(out).toContain('With 4 trays of 25 seeds for each treatment, a difference of 15 per 100');
  expect(out.replaceAll(/\s+/g, ' ')).toContain('Drawn by lot from the random seed “a secret of some length”.');
});

test('the same seed draws the same files, byte for byte; another draws another layout', async () => {
  const [one, same, other] = [await plan(blind), await plan(blind), await plan(blind, { seed: 'quite another one' })];
  for (const name of ['trial.yaml', 'plan.yaml', 'sowings.csv', 'counts.csv'])
    expect(await one.read(name)).toBe(await same.read(name));
  expect(await readFile(one.key, 'utf8')).not.toBe(await readFile(other.key, 'utf8'));
  expect(await other.read('sowings.csv')).toBe(await one.read('sowings.csv'));
});

test('in a blind trial treatments and seed stand in the key only, outside the content folder', async () => {
  const { content, key, out } = await plan(blind);
  const folder = join(content, 'trials', 'radish');
  const sown = (await readdir(folder)).filter((name) => /\.(csv|yaml)$/.test(name));
  for (const name of sown) {
    const text = await readFile(join(folder, name), 'utf8');
    expect(text, name).not.toContain('a secret of some length');
    if (name !== 'trial.yaml' && name !== 'plan.yaml') expect(text, name).not.toMatch(/open|lidded/);
  }
  expect(parse(await readFile(join(folder, 'plan.yaml'), 'utf8')).sowings[0]).not.toHaveProperty('treatment');
  expect((await readFile(key, 'utf8')).split('\n')[0]).toBe('sowing,treatment,seed');
  expect(await readdir(dirname(key))).toEqual(['key.csv', 'sealed-key.pdf']);
  expect(await readdir(join(folder, 'sheets'))).not.toContain('sealed-key.pdf');
  expect(out).not.toContain('a secret of some length');
});

test('never writes over a trial or a key', async () => {
  const first = await plan(blind);
  const before = await first.read('plan.yaml');
  const again = await plan(blind, { content: first.content, seed: 'quite another one' });
  expect(again).toMatchObject({ code: 1, err: expect.stringContaining('is there already and stays as it is') });
  expect(await first.read('plan.yaml')).toBe(before);
  const third = await plan(['radish-2', ...blind.slice(1)], { content: first.content });
  expect(third).toMatchObject({ code: 1, err: expect.stringContaining('key.csv is there already') });
  expect(await readdir(join(first.content, 'trials'))).toEqual(['leek', 'radish']);
});

test('the key may not lie in the content folder', async () => {
  const content = await temporaryContent();
  const terminal = { out: () => {}, err: (text: string) => (told += text), terminal: false };
  let told = '';
  const world = { today: '2026-03-01', seed: 'a secret of some length', ask: null };
  expect(await runPlan([...blind, '--content', content, '--key', `${content}/key.csv`], terminal, world)).toBe(2);
  expect(told).toContain('The key may not lie in the content folder');
});

test('a YAML file says more: several lots, blocks, traits; options go before it', async () => {
  const file = join(await temporaryContent(), 'request.yaml');
  const request = {
    trial: 'radish',
    title: 'Radish',
    question: 'Do more come up?',
    authors: ['me'],
    new_people: { me: { name: 'My Name' } },
    lots: ['leek-2025', 'radish-1'],
    new_lots: { 'radish-1': { crop: 'radish', species: 'Raphanus sativus' } },
    treatments: [
      { id: 'open', label: 'Open', control: true },
      { id: 'lid', label: 'Lid' },
    ],
    sowing: { container: 'a pot', block: 'shelf', treated: 'each-sowing' },
    scoring: { germinated: 'visible', blind: 'no', days: [4, 8] },
    outcomes: [
      { id: 'up', measure: 'germination', day: 8, matters: 20 },
      { id: 'height', measure: 'trait', column: 'height (mm)', day: 14 },
    ],
    each: 3,
    seeds: 20,
    plants: 2,
  };
  await writeFile(file, stringify(request));
  const { code, err, content, read } = await plan(['--from', file, '--seeds', '30']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const { trial, problems } = await readTrialFolder(join(content, 'trials', 'radish'));
  expect(problems.filter(({ level }) => level === 'error')).toEqual([]);
  expect(trial?.sowings.map(({ block }) => block)).toEqual(['1', '2', '3'].flatMap((n) => Array(4).fill(`shelf ${n}`)));
  expect(new Set(trial?.sowings.map(({ seeds }) => seeds))).toEqual(new Set([30]));
  expect((await read('measurements.csv')).split('\n').slice(0, 3)).toEqual(['sowing,day,plant,height (mm)', 's01,14,1,', 's01,14,2,']); // prettier-ignore
  expect(trial?.outcomes[1]?.column).toBe('height');
});

test.each([
  [['--matters', '0'], 'a difference of 0 matters to nobody'],
  [['--day', '7'], 'day 7 is none of the days of counting (3, 5, 8)'],
  [['--days', '5,3'], 'day 3 comes after day 5'],
  [['--days', '0,3'], 'day 0 is the day of sowing'],
  [['--treatment', 'Open'], 'two treatments are called "open"'],
  [['--lot', 'lek-2025'], 'Did you mean "leek-2025"?'],
  [['--each', '0'], 'each: '],
  [['--each', '~4'], 'Write the number'],
  [['--seed', 'x'], 'which could be guessed'],
  [['--varies', 'sook'], 'Did you mean "soak"?'],
])('%j is refused with a remedy, and nothing is written', async (changed, message) => {
  const { code, err, content } = await plan([...blind, ...changed]);
  expect(code).toBe(1);
  expect(err).toContain(message);
  expect(err).toContain('  error: ');
  expect(await readdir(join(content, 'trials'))).toEqual(['leek']);
});

test.each([
  [['--each', '1'], 'One sowing of each: the treatment cannot be told'],
  [['--treated', 'at-once'], 'All seed is treated in one go'],
  [['--blind', 'no'], 'Whoever counts will know'],
  [['--sown', '2026-02-01'], 'after the day of sowing (1 February 2026)'],
  [['--treatment', 'A', '--treatment', 'B', '--treatment', 'C'], '4 comparisons are made'],
])('%j is warned of', async (changed, message) => {
  const { code, out } = await plan([...blind, ...changed]);
  expect(code).toBe(0);
  expect(out.replaceAll(/\s+/g, ' ')).toContain(message);
});

test('two changes at once and different soaks are warned of', async () => {
  const file = join(await temporaryContent(), 'request.yaml');
  const treatments = [
    { id: 'dry', label: 'Dry', control: true, soak_hours: 0, temperature: 4 },
    { id: 'wet', label: 'Wet', soak_hours: 6, temperature: 20 },
  ];
  await writeFile(file, stringify({ treatments }));
  const without = RADISH.filter((_, index) => ![6, 7, 8, 9].includes(index));
  const { out } = await plan(['radish', '--from', file, ...without]);
  expect(out.replaceAll(/\s+/g, ' ')).toContain('Wet differs from the control in more than one thing.');
  expect(out.replaceAll(/\s+/g, ' ')).toContain('Wet and the control are soaked for different times');
});

test('asks for what is not given, proposes sowings and seeds, and writes only after a yes', async () => {
  const asked: string[] = [];
  const typed: Record<string, string> = { 'A short title': 'Radish', 'What happens to the seed that is not treated (the control)?': 'Open' }; // prettier-ignore
  const ask = (write: boolean): Ask => ({
    input: ({ message, default: usual }) => {
      asked.push(message);
      return Promise.resolve(typed[message] ?? usual ?? 'some words');
    },
    select: ({ message, choices }) => {
      asked.push(message);
      return Promise.resolve(choices[0]?.value ?? '');
    },
    confirm: ({ message }) => Promise.resolve(message === 'Write these files?' ? write : true),
  });
  const no = await plan([], { ask: ask(false) });
  expect(no.code).toBe(1);
  expect(await readdir(join(no.content, 'trials'))).toEqual(['leek']);
  const yes = await plan([], { ask: ask(true) });
  expect(yes).toMatchObject({ code: 0, err: '' });
  expect(yes.out).toMatch(/^Proposed: \d+ sowings of each treatment and lot/);
  expect(asked).toContain('What do you want to know? One question');
});

test.each([[['--nonsense']], [['one', 'two']], [[]], [['--from', '/nowhere.yaml']]])(
  '%j is not how it is called',
  async (args) => {
    const { code, err } = await plan(args);
    expect(code).toBe(2);
    expect(err).toContain('npm run plan -- [<trial>]');
  },
);

test('a trial is planned, counted blind, opened, analysed, published and re-checked with our own commands and files', async () => {
  const { content, key, read } = await plan([...blind, '--each', '6']);
  const folder = join(content, 'trials', 'radish');
  const treatmentOf = new Map((await readFile(key, 'utf8')).trim().split('\n').slice(1).map((row) => row.split(',').slice(0, 2) as [string, string])); // prettier-ignore
  const idOf = new Map((await read('sowings.csv')).trim().split('\n').slice(1).map((row) => [row.split(',').at(-1) ?? '', row.split(',')[0] ?? ''])); // prettier-ignore
  const random = seededRandom(7);
  const up = new Map<string, number>();
  const rows = (await read('counts.csv')).trim().split('\n').map((row, index) => {
    if (index === 0) return row;
    const [label = '', day] = row.split(',');
    const share = treatmentOf.get(idOf.get(label) ?? '') === 'lidded' ? 0.92 : 0.5;
    const total = day === '3' ? 0 : Math.max(up.get(label) ?? 0, Math.round(25 * share + 3 * (random() - 0.5)));
    up.set(label, total);
    return `${label},${day},${total},kesh,`;
  }); // prettier-ignore
  const yaml = await read('trial.yaml');
  const status = (name: string) =>
    writeFile(join(folder, 'trial.yaml'), `${yaml.replace('status: planned', `status: ${name}`)}sown: 2026-03-02\n`);
  await writeFile(join(folder, 'counts.csv'), `${rows.join('\n')}\n`);
  const run = async (command: typeof runCheck | typeof runAnalyse | typeof runRecheck, args: readonly string[]) => {
    let text = '';
    const terminal = { out: (line: string) => (text += line), err: (line: string) => (text += line), terminal: false };
    return { code: await command(args, terminal), text };
  };

  await status('growing');
  expect(await run(runCheck, ['radish', '--content', content])).toMatchObject({ code: 0 });
  expect((await run(runAnalyse, ['radish', '--content', content])).text).not.toContain('Lidded against Open');
  const apart = await publish(folder);
  expect(apart.has('key.csv')).toBe(false);

  // The key lies in the folder, but the last count is not done: it stays shut.
  await writeFile(join(folder, 'key.csv'), await readFile(key));
  for (const [name, bytes] of await publish(folder)) {
    if (name.endsWith('.zip')) continue;
    const text = new TextDecoder().decode(bytes);
    expect(name).not.toBe('key.csv');
    expect(text, name).not.toContain('a secret of some length');
    if (/counts|sowings/.test(name)) expect(text, name).not.toMatch(/lidded|,open/);
  }

  await status('finished');
  expect(await run(runCheck, ['radish', '--content', content])).toMatchObject({ code: 0 });
  const { text } = await run(runAnalyse, ['radish', '--content', content]);
  expect(text).toMatch(/Lidded against Open\n +\d+ more per 100 .+: came up more/);
  const { trial } = await readTrialFolder(folder);
  expect(trial?.keyKeptApart).toBe(true);
  expect(trial && analyse(trial).plan).toEqual({ fixed: '2026-03-01', changes: [] });

  const out = join(content, 'published');
  await mkdir(out);
  for (const [name, bytes] of await publish(folder)) await writeFile(join(out, name), bytes);
  const recheck = await run(runRecheck, [out]);
  expect(recheck.code, recheck.text).toBe(0);
});

async function publish(folder: string): Promise<Map<string, Uint8Array>> {
  const { trial } = await readTrialFolder(folder);
  if (trial === null) throw new Error('there is no trial');
  const files = await publishedFiles(folder, trial, publishedAnalysis(trial, DEFAULT_SITE.language), DEFAULT_SITE);
  return new Map(files.map(({ name, bytes }) => [name, bytes]));
}
