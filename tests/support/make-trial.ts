import type { Count, Lot, Outcome, Sowing, Treatment, Trial } from '../../src/trial/trial.ts';

export const makeLot = (id: string, crop = 'leek', species = 'Allium porrum'): Lot => ({
  id,
  crop,
  species,
  cultivar: null,
  supplier: null,
  origin: null,
  seedsPerGram: null,
  harvested: null,
  moisture: null,
  accession: null,
  storage: null,
  note: null,
});

export const makeTreatment = (id: string, parts: Partial<Treatment> = {}): Treatment => ({
  id,
  label: id,
  control: false,
  soakHours: null,
  handling: null,
  temperature: null,
  moisture: null,
  ...parts,
});

export const makeOutcome = (parts: Partial<Outcome> = {}): Outcome => ({
  id: 'germination',
  measure: 'germination',
  column: null,
  day: 14,
  matters: null,
  primary: true,
  pool: false,
  ...parts,
});

export const makeSowing = (id: string, treatment: string, parts: Partial<Sowing> = {}): Sowing => ({
  id,
  lot: 'leek',
  treatment,
  seeds: 50,
  seedsByMass: false,
  batch: null,
  tray: null,
  block: null,
  position: null,
  label: null,
  sown: '2026-04-04',
  stored: null,
  mass: null,
  soakHours: null,
  line: 2,
  ...parts,
});

export const makeCount = (
  sowing: string,
  day: number,
  germinated: number | null,
  parts: Partial<Count> = {},
): Count => ({
  sowing,
  day,
  germinated,
  abnormal: null,
  hard: null,
  fresh: null,
  dead: null,
  scorer: null,
  note: null,
  file: 'counts.csv',
  line: 2,
  ...parts,
});

/** A finished trial without a blemish: one lot, two treatments, no data. Override what the test is about. */
export const makeTrial = (parts: Partial<Trial> = {}): Trial => ({
  id: 'test',
  title: 'Jar or packet',
  question: 'Does the jar keep seed better?',
  summary: null,
  status: 'finished',
  keyKeptApart: false,
  authors: [{ id: 'mara', name: 'Mara', affiliation: null, orcid: null, url: null }],
  roles: {},
  varies: 'storage',
  sown: '2026-04-04',
  finished: null,
  licence: 'CC-BY-4.0',
  doi: null,
  repeats: null,
  aliases: [],
  lots: [makeLot('leek')],
  treatments: [
    makeTreatment('packet', { label: 'Paper packet', control: true }),
    makeTreatment('jar', { label: 'Sealed jar' }),
  ],
  sowing: { container: 'tray', assignment: 'random', treated: 'each-sowing', block: null },
  scoring: { germinated: 'loop visible', blind: 'yes', days: [], counts: 'cumulative' },
  outcomes: [makeOutcome()],
  fixedBeforehand: '2026-04-01',
  conditions: {},
  interests: 'none',
  impression: null,
  involves: [],
  seedlingsEaten: false,
  seedDressed: false,
  events: [],
  changes: [],
  storage: null,
  sowings: [],
  counts: [],
  traits: [],
  measurements: [],
  weighings: [],
  photos: [],
  plan: null,
  inputs: [],
  readAs: [],
  ...parts,
});

/**
 * A germination trial from counts on one day: `[germinated, seeds]` a sowing, by treatment.
 * `germinationTrial({ packet: [[40, 50], [42, 50]], jar: [[45, 50], [48, 50]] })`
 */
export function germinationTrial(
  counts: Readonly<Record<string, readonly (readonly [germinated: number | null, seeds: number])[]>>,
  parts: Partial<Trial> = {},
  { lot = 'leek', day = 14 } = {},
): Trial {
  const rows = Object.entries(counts).flatMap(([treatment, units]) =>
    units.map(([germinated, seeds], index) => ({
      id: `${lot}-${treatment}-${index + 1}`,
      treatment,
      germinated,
      seeds,
    })),
  );
  return makeTrial({
    sowings: rows.map(({ id, treatment, seeds }) => makeSowing(id, treatment, { lot, seeds })),
    counts: rows.map(({ id, germinated }) => makeCount(id, day, germinated)),
    ...parts,
  });
}
