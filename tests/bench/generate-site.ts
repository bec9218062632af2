import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '../../src/statistics/random.ts';

const LOTS = ['leek', 'onion', 'carrot', 'dill'];
const TREATMENTS = ['packet', 'jar'];
const REPEATS = [1, 2, 3, 4];
const DAYS = [3, 4, 5, 6, 8, 10, 12, 14];
const SEEDS = 50;
const PLANTS = [1, 2, 3, 4, 5];

/**
 * Writes a content folder of invented trials, each 4 lots × 2 treatments × 4 sowings × 8 count days, with heights and a report in the author's words.
 * The same number gives the same bytes.
 */
export function generateSite(folder: string, trials: number): void {
  write(
    folder,
    'site.yaml',
    'name: Invented trials\nbase: https://bench.example\nlanguage: en\nlicence: CC0-1.0\nnotices: [All data are invented.]\n',
  );
  write(folder, 'people.yaml', 'nobody: { name: Nobody, affiliation: a generator }\n');
  write(folder, 'lots.yaml', LOTS.map((lot) => `${lot}: { crop: ${lot}, species: Planta inventa }\n`).join(''));
  for (let number = 1; number <= trials; number++)
    writeTrial(folder, `trial-${String(number).padStart(3, '0')}`, 2017 + (number % 10));
}

function writeTrial(folder: string, id: string, year: number): void {
  const random = seededRandom(id);
  const sowings = LOTS.flatMap((lot) =>
    TREATMENTS.flatMap((treatment) =>
      REPEATS.map((repeat) => ({ id: `${lot}-${treatment}-${repeat}`, lot, treatment })),
    ),
  );
  const place = (file: string) => `trials/${id}/${file}`;
  write(folder, place('trial.yaml'), trialYaml(id, year));
  table(
    folder,
    place('sowings.csv'),
    'sowing,lot,treatment,seeds',
    sowings.map((sowing) => [sowing.id, sowing.lot, sowing.treatment, SEEDS]),
  );
  table(
    folder,
    place('counts.csv'),
    ['sowing', ...DAYS.map((day) => `day ${day}`)].join(','),
    sowings.map((sowing) => [sowing.id, ...course(random)]),
  );
  table(
    folder,
    place('measurements.csv'),
    'sowing,day,plant,height (mm)',
    sowings.flatMap((sowing) => PLANTS.map((plant) => [sowing.id, 14, plant, 25 + Math.floor(random() * 30)])),
  );
  write(folder, place('report.mdx'), REPORT);
}

const REPORT = `## Why we asked

Seed from packets had come up badly the year before, and somebody had a shelf of jars. Nothing here happened.

<Result outcome="germination"/>

The middle of it is <Num outcome="germination" of="difference" lot="leek"/> in one lot.

<Caveats/>
`;

/** Seedlings up by each day: never fewer than the day before, hardly any new ones at the end. */
function course(random: () => number): number[] {
  const final = Math.round(SEEDS * (0.55 + 0.4 * random()));
  const middle = 5 + 2 * random();
  return DAYS.map((day) => Math.round(final / (1 + Math.exp((middle - day) / 0.8))));
}

/** A trial sown in one of ten years. */
const trialYaml = (id: string, year: number) => `title: Jar or packet, ${id}
question: Does seed from a jar come up better than seed from a packet?
status: finished
authors: [nobody]
sown: ${year}-03-01
fixed_beforehand: ${year}-02-20
lots: [${LOTS.join(', ')}]
treatments:
  - { id: packet, label: Packet, control: true }
  - { id: jar, label: Jar }
sowing: { container: a tray, assignment: random, treated: each-sowing }
scoring: { germinated: seed leaves visible, blind: yes, days: [${DAYS.join(', ')}] }
outcomes:
  - { id: germination, measure: germination, day: 14, matters: 10, primary: true, pool: true }
  - { id: speed, measure: t50, matters: 1 }
  - { id: height, measure: trait, column: height, day: 14, matters: 5 }
interests: none, all data are invented
`;

function table(folder: string, file: string, head: string, rows: readonly (readonly (string | number)[])[]): void {
  write(folder, file, [head, ...rows.map((row) => row.join(','))].join('\n') + '\n');
}

function write(folder: string, file: string, text: string): void {
  const path = join(folder, file);
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text);
}
