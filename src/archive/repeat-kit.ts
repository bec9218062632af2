import { stringify } from 'yaml';
import { schemaLine } from '../trial/schema/schema-line.ts';
import type { Lot, Outcome, Sowing, Treatment, Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { csvText } from './csv-text.ts';
import { given } from './given.ts';
import type { Cell } from './table.ts';
import { trialToRepeat } from './trial-to-repeat.ts';

/**
 * What somebody needs to do a trial again: a README, and a trial's folder in which the question, treatments, plan
 * and margin of the original stand, a fresh layout, and tables to fill in. Lots and people are those of whoever
 * repeats it, so what only they know is left empty; until it is filled in, the check says so.
 *
 * @param address of the original report
 * @param base    address of the site that published it, whose JSON Schemas its YAML files name
 * @returns text by name within the zip; null where treatments or numbers of seeds are not known (yet)
 */
export function repeatKit(
  trial: Trial,
  address: string,
  base: string,
  words: Words,
): ReadonlyMap<string, string> | null {
  const again = trialToRepeat(trial, address);
  if (again === null) return null;
  const { id: folder, sowings, seed, scoring } = again;
  const files: (readonly [string, string])[] = [
    ['trial.yaml', schemaLine(base, 'trial.yaml') + trialYaml(trial, address)],
    ['lots.yaml', schemaLine(base, 'lots.yaml') + stringify(Object.fromEntries(trial.lots.map(lotEntry)))],
    ['people.yaml', schemaLine(base, 'people.yaml') + stringify({ me: { name: '' } })],
    ['sowings.csv', sowingsCsv(sowings)],
    ['counts.csv', countsCsv(trial, sowings, scoring.days)],
    ...(trial.traits.length > 0 ? [['measurements.csv', measurementsCsv(trial)] as const] : []),
  ];
  return new Map([
    ['README.txt', readme(trial, words, folder, address, seed)],
    ...files.map(([name, text]) => [`${folder}/${name}`, text] as const),
  ]);
}

function trialYaml(trial: Trial, address: string): string {
  const { title, question, varies, lots, treatments, sowing, scoring, outcomes, involves, storage } = trial;
  const hasBlocks = trial.sowings.every(({ block }) => block !== null);
  return stringify(
    given({
      title,
      question,
      status: 'planned',
      repeats: address,
      authors: ['me'],
      varies,
      lots: lots.map(({ id }) => id),
      treatments: treatments.map(treatmentYaml),
      sowing: given({ ...sowing, assignment: hasBlocks ? 'random-in-blocks' : 'random' }),
      scoring: given({ ...scoring, counts: 'cumulative', days: scoring.days.length > 0 ? scoring.days : null }),
      outcomes: outcomes.length > 0 ? outcomes.map(outcomeYaml) : null,
      involves: involves.length > 0 ? involves : null,
      seedlings_eaten: trial.seedlingsEaten || null,
      seed_dressed: trial.seedDressed || null,
      storage: storage && storage.tests.length > 0 ? { tests: storage.tests } : null,
    }),
  );
}

const lotEntry = ({ id, crop, species, cultivar }: Lot) => [id, given({ crop, species, cultivar })] as const;
const treatmentYaml = ({ soakHours, control, ...treatment }: Treatment) =>
  given({ ...treatment, control: control || null, soak_hours: soakHours });
const outcomeYaml = ({ primary, pool, ...outcome }: Outcome) =>
  given({ ...outcome, primary: primary || null, pool: pool || null });

function sowingsCsv(sowings: readonly Sowing[]): string {
  const cells: Readonly<Record<string, (sowing: Sowing) => Cell>> = {
    sowing: ({ id }) => id,
    lot: ({ lot }) => lot,
    treatment: ({ treatment }) => treatment,
    seeds: ({ seeds }) => seeds && Math.round(seeds),
    batch: ({ batch }) => batch,
    tray: ({ tray }) => tray,
    block: ({ block }) => block,
    position: ({ position }) => position,
    'stored (years)': ({ stored }) => stored,
  };
  const used = Object.entries(cells).filter(([, cell]) => sowings.some((sowing) => cell(sowing) !== null));
  const rows = sowings.map((sowing) => used.map(([, cell]) => cell(sowing)));
  return csvText({ head: used.map(([name]) => name), rows });
}

/** A row a sowing and planned day, the cells to be filled in left empty. */
function countsCsv({ counts }: Trial, sowings: readonly Sowing[], days: readonly number[]): string {
  const sorts = (['abnormal', 'hard', 'fresh', 'dead'] as const).filter((sort) =>
    counts.some((count) => count[sort] !== null),
  );
  const empty = ['germinated', ...sorts].map(() => null);
  const rows = days.flatMap((day) => sowings.map(({ id }): Cell[] => [id, day, ...empty]));
  return csvText({ head: ['sowing', 'day', 'germinated', ...sorts], rows });
}

function measurementsCsv({ traits }: Trial): string {
  const names = traits.map(({ column, unit }) => (unit === null ? column : `${column} (${unit})`));
  return csvText({ head: ['sowing', 'day', 'plant', ...names], rows: [] });
}

function readme({ title, sowings, conditions }: Trial, words: Words, folder: string, address: string, seed: string) {
  const { ui } = words;
  const containers = Map.groupBy(sowings, ({ lot, treatment, stored }) => JSON.stringify([lot, treatment, stored]));
  const isSingle = [...containers.values()].some(
    (group) => new Set(group.map(({ id, tray }) => tray ?? id)).size === 1,
  );
  const paragraphs = [
    words.say('kit.title', { title }),
    address,
    words.say('kit.folder', { folder }),
    ui['kit.fill'],
    words.say('kit.layout', { seed }),
    ...(isSingle ? [ui['kit.single']] : []),
    ui['kit.plan'],
    ui['kit.counts'],
    ui['kit.finish'],
    [ui['kit.conditions'], ...Object.entries(conditions).map(([name, text]) => `- ${name}: ${text}`)],
  ];
  return `${paragraphs.map((part) => (typeof part === 'string' ? part : part.join('\n'))).join('\n\n')}\n`;
}
