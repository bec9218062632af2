/**
 * What a trial is once its files have been read and checked: plain data, JSON-safe, in the order of
 * the files. Everything to the right (analysis, wording, charts, archive …) starts from here.
 * Days count from the day of sowing (day 0) and may have decimals; dates are ISO (`2026-04-04`).
 * A value that was not given is `null`, never a guess.
 */

export type Status = 'planned' | 'growing' | 'finished' | 'abandoned';
export type YesNo = 'yes' | 'no' | 'unknown';
export type Assignment = 'random' | 'random-in-blocks' | 'alternating' | 'by-hand' | 'unknown';
export type Treated = 'each-sowing' | 'in-batches' | 'at-once' | 'unknown';
export type Measure = 'germination' | 't50' | 'mgt' | 'maguire' | 'spread' | 'trait' | 'moisture' | 'storage';
export type Varies = 'soak' | 'drying' | 'storage' | 'light' | 'temperature' | 'medium' | 'dressing' | 'age' | 'other';
export type Hazard =
  | 'hot-water'
  | 'disinfectant'
  | 'acid'
  | 'desiccant'
  | 'oxygen-absorber'
  | 'freezer'
  | 'dry-ice'
  | 'oven'
  | 'heat-mat'
  | 'mould'
  | 'seed-offered';

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly affiliation: string | null;
  readonly orcid: string | null;
  readonly url: string | null;
}

/** A quantity of seed of one crop with one history. */
export interface Lot {
  readonly id: string;
  readonly crop: string;
  readonly species: string;
  readonly cultivar: string | null;
  readonly supplier: string | null;
  readonly origin: string | null;
  readonly seedsPerGram: number | null;
  readonly harvested: string | null;
  /** % wet basis, as measured or known before the trial. */
  readonly moisture: number | null;
  readonly accession: string | null;
  readonly storage: string | null;
  readonly note: string | null;
}

export interface Treatment {
  readonly id: string;
  readonly label: string;
  readonly control: boolean;
  readonly soakHours: number | null;
  /** What this treatment (or the control) got instead, in the author's words. */
  readonly handling: string | null;
  /** Storage temperature, °C, and moisture, % wet basis, of a storage series. */
  readonly temperature: number | null;
  readonly moisture: number | null;
}

export interface Outcome {
  readonly id: string;
  readonly measure: Measure;
  /** Heading in measurements.csv, without its unit; trait only. */
  readonly column: string | null;
  /** One day for all lots, a day by lot id, or null: methods.md 1. */
  readonly day: number | Readonly<Record<string, number>> | null;
  /** Smallest difference that would matter, in the unit of the outcome (points for germination). */
  readonly matters: number | null;
  readonly primary: boolean;
  /** Lots of different crops may be pooled. */
  readonly pool: boolean;
}

/** One container or row sown at one time with seeds of one lot under one treatment. */
export interface Sowing {
  readonly id: string;
  readonly lot: string;
  /** Null only in a blind trial whose key is kept apart, or at `stored` 0 of a storage series. */
  readonly treatment: string | null;
  /** Seeds sown; null where neither seeds nor mass × seeds per gram is known. */
  readonly seeds: number | null;
  readonly seedsByMass: boolean;
  readonly batch: string | null;
  readonly tray: string | null;
  readonly block: string | null;
  readonly position: string | null;
  readonly label: string | null;
  /** This sowing's own day 0: its `sown`, else the trial's; null while planned. */
  readonly sown: string | null;
  /** Storage time at `sown`, in years (365.25 days); null outside a storage series. */
  readonly stored: number | null;
  /** Grams of seed sown, where given. */
  readonly mass: number | null;
  /** Hours of soak of this sowing: its own column, else its treatment's. */
  readonly soakHours: number | null;
  readonly line: number;
}

/** One check of one sowing. All numbers are totals up to that day; null means not checked. */
export interface Count {
  readonly sowing: string;
  readonly day: number;
  /** Normal seedlings where abnormal ones are told apart, else every germinated seed. */
  readonly germinated: number | null;
  readonly abnormal: number | null;
  readonly hard: number | null;
  readonly fresh: number | null;
  readonly dead: number | null;
  readonly scorer: string | null;
  readonly note: string | null;
  readonly file: string;
  readonly line: number;
}

export interface Trait {
  readonly column: string;
  readonly unit: string | null;
}

/** One row of measurements.csv; `plant` null: one measurement of the whole sowing. */
export interface Measurement {
  readonly sowing: string;
  readonly day: number;
  readonly plant: string | null;
  /** By trait column, in the heading's unit; null where not measured. */
  readonly values: Readonly<Record<string, number | null>>;
  readonly line: number;
}

export interface Weighing {
  readonly lot: string;
  readonly treatment: string | null;
  readonly stage: 'before' | 'after' | 'oven-dry';
  /** Grams, container included where `container` is given. */
  readonly mass: number;
  readonly container: number | null;
  readonly repeat: string | null;
  readonly scaleStep: number | null;
  readonly batch: string | null;
  readonly date: string | null;
  readonly line: number;
}

/** A mishap or care that touched some sowings only: deviations and events of trial.yaml, events.csv. */
export interface Event {
  readonly day: number | null;
  readonly date: string | null;
  readonly sowings: readonly string[];
  readonly what: string;
  readonly action: 'left-out' | 'kept' | 'care';
}

export interface Change {
  readonly date: string;
  readonly what: string;
  readonly why: string | null;
}

export interface Photo {
  readonly file: string;
  readonly caption: string | null;
  readonly alt: string | null;
  readonly sowing: string | null;
  readonly day: number | null;
}

export interface SowingPlan {
  readonly container: string | null;
  readonly assignment: Assignment;
  readonly treated: Treated;
  /** What a block is, in the author's word ("shelf"); null where there are none. */
  readonly block: string | null;
}

export interface Scoring {
  readonly germinated: string | null;
  readonly blind: YesNo;
  readonly days: readonly number[];
  readonly counts: 'cumulative' | 'new';
}

/** The frozen plan (plan.yaml). `copy` is compared key by key with what trial.yaml says now. */
export interface Plan {
  readonly fixed: string;
  readonly digest: string | null;
  /** SHA-256 of the copy as it stands (RFC 8785); differs from `digest` where the plan was edited. */
  readonly computedDigest: string;
  /** question, lots, treatments, sowing, scoring, outcomes, sowings, seed, key_sha256 as written. */
  readonly copy: Readonly<Record<string, unknown>>;
}

export interface Input {
  readonly file: string;
  readonly sha256: string;
  readonly bytes: number;
}

/** What reading changed or assumed, one entry a file: "Windows-1252; semicolons; decimal commas". */
export interface ReadAs {
  readonly file: string;
  readonly encoding: string;
  readonly separator: ',' | ';' | '\t' | null;
  readonly decimal: '.' | ',' | null;
  readonly layout: 'long' | 'wide' | null;
}

export interface Trial {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly summary: string | null;
  /** As used: a blind trial without key.csv is `growing` whatever trial.yaml says. */
  readonly status: Status;
  /** True where treatments came from key.csv, kept apart until the last count. */
  readonly keyKeptApart: boolean;
  readonly authors: readonly Person[];
  /** Person id -> roles. */
  readonly roles: Readonly<Record<string, readonly string[]>>;
  readonly varies: Varies | null;
  readonly sown: string | null;
  readonly finished: string | null;
  readonly licence: string | null;
  readonly doi: string | null;
  readonly repeats: string | null;
  readonly aliases: readonly string[];
  /** In the order of trial.yaml, like treatments and outcomes. */
  readonly lots: readonly Lot[];
  readonly treatments: readonly Treatment[];
  readonly sowing: SowingPlan;
  readonly scoring: Scoring;
  /** As listed in trial.yaml; empty where none was (analysis then fills in the defaults and says so). */
  readonly outcomes: readonly Outcome[];
  /** Date in `fixed_beforehand`, "as stated by the authors". */
  readonly fixedBeforehand: string | null;
  readonly conditions: Readonly<Record<string, string>>;
  readonly interests: string | null;
  /** One text for the whole trial, or by lot id. */
  readonly impression: string | Readonly<Record<string, string>> | null;
  readonly involves: readonly Hazard[];
  readonly seedlingsEaten: boolean;
  readonly seedDressed: boolean;
  readonly events: readonly Event[];
  readonly changes: readonly Change[];
  readonly storage: {
    readonly started: string | null;
    readonly tests: readonly number[];
    readonly left: Readonly<Record<string, number>>;
  } | null;
  readonly sowings: readonly Sowing[];
  readonly counts: readonly Count[];
  readonly traits: readonly Trait[];
  readonly measurements: readonly Measurement[];
  readonly weighings: readonly Weighing[];
  readonly photos: readonly Photo[];
  readonly plan: Plan | null;
  /** Raw data files read, sorted by name: the digests of the published report. */
  readonly inputs: readonly Input[];
  readonly readAs: readonly ReadAs[];
}

/** A question that several trials answer (questions.yaml). */
export interface Question {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly measure: Measure;
  readonly matters: number | null;
  readonly trials: readonly {
    readonly trial: string;
    readonly outcome: string | null;
    readonly lot: string | null;
    readonly treatment: string | null;
    readonly control: string | null;
  }[];
}

/** The publisher: site.yaml with people.yaml, lots.yaml and questions.yaml. */
export interface Site {
  readonly name: string;
  readonly base: string;
  readonly language: string;
  readonly licence: string;
  readonly contact: string | null;
  readonly units: 'metric' | 'us';
  readonly onProblem: 'stop' | 'leave-out';
  readonly notices: readonly string[];
  readonly paper: 'a4' | 'letter';
  /** % of initial germination below which stored seed is regenerated; null: not set. */
  readonly regenerateBelow: number | null;
  readonly groupSince: string | null;
  readonly people: Readonly<Record<string, Person>>;
  readonly lots: Readonly<Record<string, Lot>>;
  readonly questions: Readonly<Record<string, Question>>;
}
