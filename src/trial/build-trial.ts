import { DATA_FILES } from './check-folder.ts';
import { outcomesOf } from './outcomes-of.ts';
import type { References } from './read-references.ts';
import type { Tables } from './read-tables.ts';
import type { TrialFile } from './read-trial-yaml.ts';
import { sha256Hex } from './sha256-hex.ts';
import { treatmentOf } from './treatment-of.ts';
import type { TrialContext } from './trial-context.ts';
import type { Event, Input, Outcome, Photo, Plan, ReadAs, Site, Status, Trait, Trial } from './trial.ts';
import type { YamlFile } from './yaml/read-yaml.ts';

export interface TrialParts {
  readonly id: string;
  readonly whole: TrialFile;
  readonly site: Site;
  readonly references: References;
  readonly context: TrialContext;
  readonly tables: Tables;
  readonly plan: Plan | null;
  readonly events: readonly Event[];
  readonly photos: readonly Photo[];
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly yaml: readonly { readonly name: string; readonly yaml: YamlFile }[];
}

/** The trial from parts that were all found free of errors, with the defaults of the data format. */
export function buildTrial({
  id,
  whole,
  site,
  references,
  context,
  tables,
  plan,
  events,
  photos,
  files,
  yaml,
}: TrialParts): Trial {
  const { sowing, scoring } = whole;
  return {
    id,
    title: whole.title,
    question: whole.question,
    summary: whole.summary ?? null,
    status: statusOf(whole.status, tables.keyApart),
    keyKeptApart: tables.fromKey,
    authors: whole.authors.flatMap((author) => references.people.get(author) ?? []),
    roles: whole.roles ?? {},
    varies: whole.varies ?? null,
    sown: whole.sown ?? null,
    finished: whole.finished ?? null,
    licence: whole.licence ?? site.licence,
    doi: whole.doi ?? null,
    repeats: whole.repeats ?? null,
    aliases: whole.aliases ?? [],
    lots: whole.lots.flatMap((lot) => references.lots.get(lot) ?? []),
    treatments: whole.treatments.map(treatmentOf),
    sowing: {
      container: sowing?.container ?? null,
      assignment: sowing?.assignment ?? 'unknown',
      treated: sowing?.treated ?? 'unknown',
      block: sowing?.block ?? null,
    },
    scoring: {
      germinated: scoring?.germinated ?? null,
      blind: context.blind,
      days: scoring?.days ?? [],
      counts: context.counts,
    },
    outcomes: outcomesOf(whole.outcomes).map((outcome) => withHeading(outcome, tables.traits)),
    fixedBeforehand: whole.fixed_beforehand ?? null,
    conditions: whole.conditions ?? {},
    interests: whole.interests ?? null,
    impression: whole.impression ?? null,
    involves: whole.involves ?? [],
    seedlingsEaten: whole.seedlings_eaten ?? false,
    seedDressed: whole.seed_dressed ?? false,
    events,
    changes: (whole.changes ?? []).map(({ date, what, why }) => ({ date, what, why: why ?? null })),
    storage: whole.storage
      ? {
          started: whole.storage.started ?? null,
          tests: whole.storage.tests ?? [],
          left: whole.storage.left ?? {},
        }
      : null,
    sowings: tables.sowings,
    counts: tables.counts,
    traits: tables.traits,
    measurements: tables.measurements,
    weighings: tables.weighings,
    photos,
    plan,
    inputs: inputsOf(files),
    readAs: [...yaml.flatMap(unusual), ...tables.readAs],
  };
}

/** How a YAML file was read, where that was not plain UTF-8. */
function unusual({ name, yaml: { encoding } }: TrialParts['yaml'][number]): ReadAs[] {
  return encoding === 'UTF-8' ? [] : [{ file: name, encoding, separator: null, decimal: null, layout: null }];
}

/** A trial whose key is kept apart cannot be finished for any reader, whatever its authors say. */
function statusOf(status: Status, keyApart: boolean): Status {
  return keyApart && status === 'finished' ? 'growing' : status;
}

/** An outcome's column as the heading writes it. */
function withHeading(outcome: Outcome, traits: readonly Trait[]): Outcome {
  const wanted = outcome.column?.toLowerCase();
  const trait = traits.find(({ column }) => column.toLowerCase() === wanted);
  return trait ? { ...outcome, column: trait.column } : outcome;
}

function inputsOf(files: ReadonlyMap<string, Uint8Array>): Input[] {
  return DATA_FILES.toSorted().flatMap((file) => {
    const bytes = files.get(file);
    return bytes ? [{ file, sha256: sha256Hex(bytes), bytes: bytes.length }] : [];
  });
}
