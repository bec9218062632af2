import { parse, stringify } from 'yaml';
import { columnName } from '../trial/column-name.ts';
import { planDigest } from '../trial/plan-digest.ts';
import type { PlanRequest } from '../trial/schema/plan-request.ts';
import { schemaLine } from '../trial/schema/schema-line.ts';
import { sha256Hex } from '../trial/sha256-hex.ts';
import type { Words } from '../wording/words.ts';
import { blankCounts } from './blank-counts.ts';
import { blankMeasurements } from './blank-measurements.ts';
import { csvText } from './csv-text.ts';
import { given } from './given.ts';
import { plannedSowings, type PlannedSowing } from './planned-sowings.ts';

/** A request in which nothing is left to be proposed. */
export type SettledRequest = PlanRequest & Required<Pick<PlanRequest, 'each' | 'seeds' | 'seed'>>;

export interface PlannedFiles {
  /** Text by name within the trial's folder. */
  readonly files: ReadonlyMap<string, string>;
  /** key.csv, to be kept outside the content folder until the last count; null where the trial is not blind. */
  readonly key: string | null;
  /** Digest of the plan. */
  readonly digest: string;
}

/**
 * The files of a trial that is about to be sown: trial.yaml, the frozen plan, the sowings in places drawn by lot,
 * tables to be filled in, and lots and people that the site does not know. In a blind trial neither the treatments
 * nor the seed from which they can be drawn again stand in any of them, only in the key; the plan holds its digest,
 * which the seed in the key keeps from being guessed.
 *
 * @param fixed ISO date on which the plan is fixed
 * @param base  address of the site, whose JSON Schema trial.yaml names
 */
export function plannedFiles(request: SettledRequest, fixed: string, base: string, words: Words): PlannedFiles {
  const isBlind = request.scoring?.blind === 'yes';
  const sowings = plannedSowings(request);
  const key = isBlind ? keyCsv(sowings, request.seed) : null;
  const plan = { ...planned(request), sowings: sowings.map((sowing) => planRow(sowing, isBlind)) };
  const copy = parse(
    stringify({ ...plan, ...(key === null ? { seed: request.seed } : { key_sha256: digestOf(key) }) }),
  );
  const digest = planDigest(copy);
  const files: (readonly [string, string])[] = [
    ['trial.yaml', schemaLine(base, 'trial.yaml') + trialYaml(request, words)],
    ['plan.yaml', `# ${words.ui['planning.filePlan']}\n${stringify({ fixed, digest, ...copy })}`],
    ...(request.new_lots ? [['lots.yaml', stringify(request.new_lots)] as const] : []),
    ...(request.new_people ? [['people.yaml', stringify(request.new_people)] as const] : []),
    ['sowings.csv', sowingsCsv(sowings, isBlind)],
    ...named('counts.csv', blankCounts(request, sowings)),
    ...named('measurements.csv', blankMeasurements(request, sowings)),
  ];
  return { files: new Map(files), key, digest };
}

const named = (name: string, text: string | null) => (text === null ? [] : [[name, text] as const]);
const digestOf = (text: string) => sha256Hex(new TextEncoder().encode(text));

/** What trial.yaml and the plan have in common, with the way of placing as it was drawn. */
function planned({ title, question, varies, sown, lots, treatments, sowing, scoring, outcomes }: PlanRequest) {
  const assignment = sowing?.assignment ?? (sowing?.block === undefined ? 'random' : 'random-in-blocks');
  return defined({
    title,
    question,
    varies,
    sown,
    lots,
    treatments,
    sowing: { ...sowing, assignment },
    scoring: scoring && { ...scoring, counts: scoring.counts ?? 'cumulative' },
    outcomes: outcomes?.map((outcome) => ({ ...outcome, ...(outcome.column ? { column: columnName(outcome.column) } : {}) })), // prettier-ignore
  });
}

function trialYaml(request: PlanRequest, words: Words): string {
  const { title, question, ...rest } = planned(request);
  const { authors, roles, licence, conditions, interests, involves, seedlings_eaten, seed_dressed, repeats } = request;
  const written = defined({
    title,
    question,
    status: 'planned',
    authors,
    roles,
    ...rest,
    licence,
    conditions,
    interests,
    involves,
    seedlings_eaten,
    seed_dressed,
    repeats,
  });
  const hints = [
    ...(request.sown === undefined ? ['planning.fileSown' as const] : []),
    ...(conditions === undefined ? ['planning.fileConditions' as const] : []),
    ...(interests === undefined ? ['planning.fileInterests' as const] : []),
  ];
  return stringify(written) + hints.map((hint) => `# ${words.ui[hint].replaceAll('\n', '\n# ')}\n`).join('');
}

const defined = (values: Readonly<Record<string, unknown>>) =>
  given(Object.fromEntries(Object.entries(values).map(([key, value]) => [key, value ?? null])));

const planRow = ({ treatment, ...rest }: PlannedSowing, isBlind: boolean) => {
  const { id, lot, seeds, block, position, label } = rest;
  const row = { sowing: id, lot, treatment: isBlind ? null : treatment, seeds: String(seeds), block, position, label };
  return given(row);
};

function sowingsCsv(sowings: readonly PlannedSowing[], isBlind: boolean): string {
  const columns: readonly (readonly [string, (sowing: PlannedSowing) => string | number | null])[] = [
    ['sowing', ({ id }) => id],
    ['lot', ({ lot }) => lot],
    ['treatment', ({ treatment }) => (isBlind ? null : treatment)],
    ['seeds', ({ seeds }) => seeds],
    ['block', ({ block }) => block],
    ['position', ({ position }) => position],
    ['label', ({ label }) => label],
  ];
  const used = columns.filter(([, cell]) => sowings.some((sowing) => cell(sowing) !== null));
  const rows = sowings.map((sowing) => used.map(([, cell]) => cell(sowing)));
  return csvText({ head: used.map(([name]) => name), rows });
}

function keyCsv(sowings: readonly PlannedSowing[], seed: string): string {
  const rows = sowings.map(({ id, treatment }) => [id, treatment, seed]);
  return csvText({ head: ['sowing', 'treatment', 'seed'], rows });
}
