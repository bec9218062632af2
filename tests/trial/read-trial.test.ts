import { expect, test } from 'vitest';
import { planDigest } from '../../src/trial/plan-digest.ts';
import { sha256Hex } from '../../src/trial/sha256-hex.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { readChanged, TRIAL_FILES, type TextFiles } from './trial-files.ts';

const YAML = TRIAL_FILES['trial.yaml'];

/** The trial, which must be there, and no more than the notices and warnings named. */
function readGood(changed: TextFiles, said: readonly string[] = [], site: TextFiles = {}): Trial {
  const { trial, problems } = readChanged(changed, site);
  expect(problems.map(({ level, rule }) => `${level} ${rule}`)).toEqual(said);
  if (trial === null) throw new Error('no trial');
  return trial;
}
const totals = ({ counts }: Trial) => counts.map(({ sowing, day, germinated }) => `${sowing} ${day} ${germinated}`);

test('defaults are those of the data format', () => {
  const trial = readGood({});
  expect(trial).toMatchObject({
    status: 'finished',
    licence: 'CC-BY-4.0',
    scoring: { blind: 'unknown', counts: 'cumulative', days: [], germinated: null },
    sowing: { assignment: 'unknown', treated: 'unknown', block: null, container: null },
    outcomes: [],
    keyKeptApart: false,
    plan: null,
    storage: null,
    seedDressed: false,
    conditions: {},
  });
  expect(JSON.parse(JSON.stringify(trial))).toEqual(trial); // plain data
});

test('the first outcome is primary where none says so, else the first that does', () => {
  const primary = (text: string) => readGood({ 'trial.yaml': YAML + text }).outcomes.map((outcome) => outcome.primary);
  const [a, b, c] = ['a', 'b', 'c'].map((id) => `  - id: ${id}\n    measure: germination\n`);
  expect(primary(`outcomes:\n${a}${b}`)).toEqual([true, false]);
  expect(primary(`outcomes:\n${a}${b}    primary: true\n${c}    primary: yes\n`)).toEqual([false, true, false]);
});

test.each([
  ['true', 'yes'],
  ['false', 'no'],
  ['yes', 'yes'],
  ['no', 'no'],
  ['unknown', 'unknown'],
])('blind: %s is read as %s', (written, read) => {
  expect(readGood({ 'trial.yaml': `${YAML}scoring: { blind: ${written} }\n` }).scoring.blind).toBe(read);
});

test('text in YAML stays as it was written', () => {
  const lots = 'leek-2025: { crop: leek, species: Allium porrum, cultivar: 1.10, accession: 007, harvested: 2025 }\n';
  const trial = readGood({}, [], { 'lots.yaml': lots });
  expect(trial.lots[0]).toMatchObject({ cultivar: '1.10', accession: '007', harvested: '2025' });
});

test('what must not stop a trial', () => {
  const [head] = TRIAL_FILES['counts.csv'].split('\n');
  const rows = (count: (sowing: string) => string) =>
    `${head}\n${['s01', 's02', 's03', 's04'].map((id) => `${id},8,${count(id)}\n`).join('')}`;
  readGood({ 'counts.csv': rows(() => '0') });
  readGood({ 'counts.csv': rows(() => '50') });
  readGood({ 'counts.csv': rows((id) => (id === 's02' ? 'NC' : '20')) });
  readGood({ 'counts.csv': null, 'measurements.csv': 'sowing,day,height (mm)\ns01,8,20\ns02,8,25\n' });
  readGood({
    'trial.yaml': YAML.replace('finished', 'planned').replace('sown: 2026-04-04\n', ''),
    'counts.csv': rows(() => ''),
  });
  readGood({ 'trial.yaml': YAML.replace('finished', 'planned'), 'sowings.csv': null, 'counts.csv': null });
  readGood({
    'trial.yaml': YAML.replace('finished', 'growing'),
    'counts.csv': 'sowing,day 5,day 8\ns01,3,\ns02,4,\ns03,,\ns04,2,\n',
  });
  readGood({ 'trial.yaml': YAML.replace('finished', 'growing'), 'counts.csv': null });
  readGood({ 'trial.yaml': YAML.replace('finished', 'abandoned'), 'counts.csv': null, 'sowings.csv': null });
  readGood({
    'sowings.csv': null,
    'counts.csv': null,
    'weighings.csv': 'lot,treatment,stage,mass (g)\nleek-2025,jar,before,10\nleek-2025,packet,before,10\n',
  });
});

test('a missed day in the middle of a finished trial is a notice', () => {
  readGood({ 'counts.csv': 'sowing,day 5,day 8\ns01,3,8\ns02,,9\ns03,2,\ns04,NC,7\n' }, [
    'notice empty-count',
    'notice empty-count',
  ]);
});

test('wide with fates, long with categories: the same counts', () => {
  const long = readGood({
    'counts.csv':
      'sowing,day,germinated,abnormal,dead,note\ns01,5,3,,,\ns01,8,8,1,2,mould\ns02,5,4,,,\ns02,8,9,,,\ns03,5,NC,,,\ns03,8,9,,,\ns04,5,1,,,\ns04,8,9,,,\n',
  });
  const wide = readGood({
    'counts.csv': 'sowing,Day 8,day 5\ns04,9,1\ns03,9,NC\ns01,8,3\ns02,9,4\n',
    'fates.csv': 'sowing,day,abnormal,dead,note\ns01,8,1,2,mould\n',
  });
  const bare = ({ counts }: Trial) => counts.map(({ line: _line, ...count }) => count);
  expect(bare(wide)).toEqual(bare(long));
});

test('a fate on a day without count is a check of its own', () => {
  const trial = readGood({ 'fates.csv': 'sowing,date,hard\ns01,2026-04-18,3\n' });
  expect(trial.counts.filter(({ sowing }) => sowing === 's01').at(-1)).toMatchObject({
    day: 14,
    germinated: null,
    hard: 3,
    file: 'fates.csv',
  });
});

test('dates count from the day 0 of each sowing', () => {
  const trial = readGood({
    'sowings.csv': 'sowing,lot,treatment,seeds,sown\ns01,leek-2025,packet,50,\ns02,leek-2025,jar,50,2026-04-06\n',
    'counts.csv': 'sowing,2026-04-09,2026-04-12\ns01,3,8\ns02,1,4\n',
  });
  expect(totals(trial)).toEqual(['s01 5 3', 's01 8 8', 's02 3 1', 's02 6 4']);
  expect(trial.sowings.map(({ sown }) => sown)).toEqual(['2026-04-04', '2026-04-06']);
});

test('counts: new are added up; a missed check is in the next one', () => {
  const trial = readGood({
    'trial.yaml': `${YAML}scoring: { counts: new }\n`,
    'counts.csv': 'sowing,day,germinated\ns01,11,4\ns01,5,3\ns01,8,NC\ns02,5,1\ns03,5,1\ns04,5,1\n',
  });
  expect(totals(trial).slice(0, 3)).toEqual(['s01 5 3', 's01 8 null', 's01 11 7']);
});

test('counts may use labels, also where treatments stand in key.csv', () => {
  const trial = readGood({
    'sowings.csv': 'sowing,lot,seeds,label\ns01,leek-2025,50,K1\ns02,leek-2025,50,K2\n',
    'key.csv': 'sowing,treatment\nK2,jar\ns01,packet\n',
    'counts.csv': 'sowing,day,germinated\nK2,8,30\nk1,8,20\n'.replace('k1', 'K1'),
  });
  expect(trial.keyKeptApart).toBe(true);
  expect(trial.sowings.map(({ id, treatment }) => [id, treatment])).toEqual([
    ['s01', 'packet'],
    ['s02', 'jar'],
  ]);
  expect(totals(trial)).toEqual(['s01 8 20', 's02 8 30']);
});

test('a blind trial whose key is kept apart is growing, its treatments unknown', () => {
  const trial = readGood(
    {
      'trial.yaml': `${YAML}scoring: { blind: yes }\n`,
      'sowings.csv': 'sowing,lot,seeds\ns01,leek-2025,50\ns02,leek-2025,50\ns03,leek-2025,50\ns04,leek-2025,50\n',
    },
    ['warning key-apart'],
  );
  expect(trial.status).toBe('growing');
  expect(trial.sowings.map(({ treatment }) => treatment)).toEqual([null, null, null, null]);
});

test('a storage series that is counted blind: the key of the test under way is kept apart, earlier ones are known', () => {
  const yaml = `${YAML.replace('finished', 'growing')}scoring: { blind: yes }\nstorage: { tests: [0, 1, 2] }\n`;
  const rows = (last: string) =>
    `sowing,lot,treatment,seeds,stored (years)\ns01,leek-2025,,50,0\ns02,leek-2025,jar,50,1\ns03,leek-2025,packet,50,1\ns04,leek-2025,${last},50,2\n`;
  const sealed = readGood({ 'trial.yaml': yaml, 'sowings.csv': rows('') });
  expect(sealed.sowings.map(({ treatment }) => treatment)).toEqual([null, 'jar', 'packet', null]);
  const opened = readGood({ 'trial.yaml': yaml, 'sowings.csv': rows(''), 'key.csv': 'sowing,treatment\ns04,jar\n' });
  expect(opened.sowings.at(-1)?.treatment).toBe('jar');
  const partly = readGood({
    'trial.yaml': yaml,
    'sowings.csv': rows('').replaceAll(/,(jar|packet),/g, ',,'),
    'key.csv': 'sowing,treatment\ns02,jar\ns03,packet\n',
  });
  expect(partly.sowings.map(({ treatment }) => treatment)).toEqual([null, 'jar', 'packet', null]);
});

test('seeds by mass are rounded to whole seeds', () => {
  const trial = readGood({
    'sowings.csv':
      'sowing,lot,treatment,seeds,mass (mg)\ns01,leek-2025,packet,,131\ns02,leek-2025,jar,50,131\ns03,leek-2025,packet,50,\ns04,leek-2025,jar,50,\n',
  });
  expect(trial.sowings.map(({ seeds, seedsByMass, mass }) => [seeds, seedsByMass, mass])).toEqual([
    [50, true, 0.131],
    [50, false, 0.131],
    [50, false, null],
    [50, false, null],
  ]);
});

test('units are converted where a column is kept in one unit, and kept as written for traits', () => {
  const trial = readGood({
    'trial.yaml': YAML.replace('label: Sealed jar', 'soak_hours: 6'),
    'sowings.csv':
      'sowing,lot,treatment,seeds,stored (months),soak (days)\ns01,leek-2025,,50,0,\ns02,leek-2025,jar,50,6,0.5\ns03,leek-2025,packet,50,6,\ns04,leek-2025,jar,50,12,\n',
    'weighings.csv': 'lot,treatment,stage,mass (oz),scale_step (g)\nleek-2025,jar,before,2,1\n',
    'measurements.csv': 'sowing,day (weeks),plant,Height (in),leaves\ns02,1,10,2.5,3\ns02,1,9,2,NA\n',
  });
  expect(trial.sowings.map(({ stored }) => stored)).toEqual([0, 0.5, 0.5, 1]);
  expect(trial.sowings.map(({ soakHours }) => soakHours)).toEqual([null, 12, null, 6]);
  expect(trial.weighings[0]).toMatchObject({ mass: 56.69904625, scaleStep: 1 });
  expect(trial.traits).toEqual([
    { column: 'Height', unit: 'in' },
    { column: 'leaves', unit: null },
  ]);
  expect(trial.measurements.map(({ day, plant, values }) => ({ day, plant, values }))).toEqual([
    { day: 7, plant: '9', values: { Height: 2, leaves: null } },
    { day: 7, plant: '10', values: { Height: 2.5, leaves: 3 } },
  ]);
});

test("an outcome's column finds its heading whatever case and unit", () => {
  const trial = readGood({
    'trial.yaml': `${YAML}outcomes: [{ id: h, measure: trait, column: height (mm), day: { leek-2025: 8 }, matters: 8 }]\n`,
    'measurements.csv': 'sowing,day,Height (mm)\ns01,8,20\n',
  });
  expect(trial.outcomes).toEqual([
    { id: 'h', measure: 'trait', column: 'Height', day: { 'leek-2025': 8 }, matters: 8, primary: true, pool: false },
  ]);
});

test('deviations, events and events.csv in one list, by sowing id', () => {
  const trial = readGood({
    'sowings.csv':
      'sowing,lot,treatment,seeds,label\ns01,leek-2025,packet,50,K1\ns02,leek-2025,jar,50,\ns03,leek-2025,packet,50,\ns04,leek-2025,jar,50,\n',
    'trial.yaml': `${YAML}deviations:\n  - { day: 6, sowings: [K1], what: dropped, action: left-out }\nevents:\n  - { date: 2026-04-09, what: watered }\n`,
    'events.csv': 'date,sowing,what,action\n2026-04-10,K1,turned,care\n',
  });
  expect(trial.events).toEqual([
    { day: 6, date: null, sowings: ['s01'], what: 'dropped', action: 'left-out' },
    { day: 5, date: '2026-04-09', sowings: [], what: 'watered', action: 'care' },
    { day: 6, date: '2026-04-10', sowings: ['s01'], what: 'turned', action: 'care' },
  ]);
});

test('pictures: day, date and sowing from the name, captions from captions.yaml', () => {
  const files = {
    'photos/8-s01.jpg': '',
    'photos/2026-04-06-bench.JPG': '',
    'photos/overview.png': '',
    'photos/captions.yaml': 'overview.png: { caption: All trays, alt: Four trays on a bench, sowing: s02, day: 5 }\n',
  };
  const trial = readGood(files, ['warning alt-missing', 'warning alt-missing']);
  expect(trial.photos).toEqual([
    { file: 'photos/2026-04-06-bench.JPG', caption: null, alt: null, sowing: null, day: 2 },
    { file: 'photos/8-s01.jpg', caption: null, alt: null, sowing: 's01', day: 8 },
    { file: 'photos/overview.png', caption: 'All trays', alt: 'Four trays on a bench', sowing: 's02', day: 5 },
  ]);
});

test('a plan with its digest is accepted; the copy keeps numbers as numbers', () => {
  const copy = {
    question: 'Does it?',
    outcomes: [{ id: 'germination', measure: 'germination', day: 8 }],
    seed: 'leek 7',
  };
  const yaml = `fixed: 2026-04-01\ndigest: ${planDigest(copy)}\nquestion: Does it?\noutcomes:\n  - measure: germination\n    id: germination\n    day: 8\nseed: leek 7\n`;
  const { plan } = readGood({ 'plan.yaml': yaml });
  expect(plan).toEqual({ fixed: '2026-04-01', digest: planDigest(copy), computedDigest: planDigest(copy), copy });
});

test('inputs are the raw data files, sorted by name, with their digests', () => {
  const files = { 'people.yaml': 'mara: { name: Mara Example }\n', 'report.mdx': 'Hello', 'photos/1.jpg': '' };
  const trial = readGood(files, ['warning alt-missing']);
  expect(trial.inputs.map(({ file }) => file)).toEqual(['counts.csv', 'people.yaml', 'sowings.csv', 'trial.yaml']);
  const bytes = new TextEncoder().encode(YAML);
  expect(trial.inputs.at(-1)).toEqual({ file: 'trial.yaml', sha256: sha256Hex(bytes), bytes: bytes.length });
});

test('the example of the data format is read without a word', () => {
  const trial = readGood({
    'trial.yaml': EXAMPLE,
    'sowings.csv': `sowing,lot,treatment,seeds,batch,tray,block,position,label
${['packet', 'jar'].flatMap((treatment, t) => [1, 2, 3, 4].map((n) => `s0${t * 4 + n},leek-2025,${treatment},50,${treatment === 'jar' ? `J${n}` : ''},T${n},${n < 3 ? 'top' : 'low'},${n}-${t + 1},K${t * 4 + n}\n`)).join('')}`,
    'counts.csv': `sowing,day 5,day 8,day 11,day 14\n${[1, 2, 3, 4, 5, 6, 7, 8].map((n) => `K${n},${n},${10 + n},${20 + n},${30 + n}\n`).join('')}`,
    'measurements.csv': 'sowing,date,plant,height (mm)\nK1,2026-04-25,1,61\nK5,2026-04-25,1,64\n',
    'weighings.csv':
      'lot,treatment,stage,mass (g),scale step (g)\nleek-2025,jar,before,25,1\nleek-2025,jar,after,24,1\n',
  });
  expect(trial).toMatchObject({
    varies: 'storage',
    sowing: { container: 'a 40-cell tray', assignment: 'random', treated: 'in-batches', block: 'shelf' },
    scoring: { blind: 'yes', days: [5, 8, 11, 14], counts: 'cumulative' },
    impression: 'The jar seed seemed quicker to us.',
    involves: ['desiccant', 'freezer'],
    seedlingsEaten: false,
    events: [{ day: 6, sowings: ['s07'], action: 'left-out' }],
  });
  expect(trial.outcomes).toEqual([
    { id: 'germination', measure: 'germination', column: null, day: 14, matters: 5, primary: true, pool: false },
    { id: 'height', measure: 'trait', column: 'height', day: 21, matters: 8, primary: false, pool: false },
  ]);
  expect(trial.treatments[1]?.soakHours).toBe(0);
  expect(trial.measurements[0]?.day).toBe(21);
});

const EXAMPLE = `title: Jar or packet for leek seed
question: After a summer, does leek seed kept dry and cold come up better than the same seed kept in the shed?
status: finished              # planned | growing | finished | abandoned
authors: [mara]               # an invented example, like every name and number here
varies: storage               # what the question changes on purpose: soak | drying | storage | light | temperature | medium | dressing | age | other
sown: 2026-04-04              # day 0
licence: CC-BY-4.0            # SPDX; default from site.yaml
lots: [leek-2025]             # ids in lots.yaml
treatments:
  - id: packet
    label: Paper packet in the shed
    control: true
  - id: jar
    label: Sealed jar with silica gel in the fridge
    soak_hours: 0             # optional; differs between treatments -> a caveat
sowing:
  container: a 40-cell tray     # what one sowing physically is
  assignment: random          # random | random-in-blocks | alternating | by-hand | unknown
  treated: in-batches         # each-sowing | in-batches | at-once | unknown: how the treatments other than the control were given
  block: shelf                # what a block is; omit where there are none
scoring:
  germinated: loop of the seedling visible above the surface
  blind: yes                  # yes | no | unknown (the default); true and false are read as yes and no
  days: [5, 8, 11, 14]        # planned count days, optional
  counts: cumulative          # cumulative | new
outcomes:                     # in order; the first with primary: true is the primary one
  - id: germination
    measure: germination      # see the table below
    day: 14                   # or by lot: { leek-2025: 14, cress-2025: 6 }
    matters: 5                # smallest difference that would matter, in the unit of the outcome
    primary: true
  - id: height
    measure: trait
    column: height
    day: 21
    matters: 8
conditions:                   # free text each; shown as a table; all optional but asked for
  substrate: peat-free seed compost
  water: 20 ml rainwater per half tray, mornings
  light: north window
  temperature: 15 to 19 °C
  place: unheated porch
interests: seed bought at full price; no one paid for this trial   # asked for on every trial
impression: The jar seed seemed quicker to us.                  # optional, one text or lot -> text; shown as impression beside the counts
involves: [desiccant, freezer]  # hazards met, each brings its notice: hot-water, disinfectant, acid, desiccant, oxygen-absorber, freezer, dry-ice, oven, heat-mat, mould, seed-offered
seedlings_eaten: false        # brings the food-safety notice
seed_dressed: false           # seed treated with a pesticide: brings that notice
deviations:
  - day: 6
    sowings: [s07]
    what: dropped while moving; a third of the compost spilt
    action: left-out          # left-out | kept
`;
