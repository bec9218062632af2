import type { Count, Event, Sowing, Trait } from '../trial.ts';

/** What whoever counts needs to know of a sowing; its treatment, lot and batch are left out on purpose. */
export type BenchSowing = Pick<Sowing, 'id' | 'label' | 'seeds' | 'tray' | 'block' | 'position' | 'sown'>;

/** A trial as it is taken to the bench: what to count, when and how, and no word about treatments. */
export interface BenchTrial {
  readonly id: string;
  readonly title: string;
  /** Day 0 of the trial; null where it is not known (yet). */
  readonly sown: string | null;
  /** What counts as up, in the author's words. */
  readonly germinated: string | null;
  /** How counts.csv is written (trial.yaml, scoring). */
  readonly counts: 'cumulative' | 'new';
  /** Planned count days. */
  readonly days: readonly number[];
  readonly traits: readonly Trait[];
  /** In the order of the bench. */
  readonly sowings: readonly BenchSowing[];
}

/** One check of one sowing; `germinated` is the total up to that day, null where it was not checked (NC). */
export type BenchCheck = Omit<Count, 'file' | 'line'>;

/** One plant, or (plant null) one sowing as a whole; values by trait column. */
export interface BenchMeasurement {
  readonly sowing: string;
  readonly day: number;
  readonly plant: string | null;
  readonly values: Readonly<Record<string, number | null>>;
}

/** A mishap or care; sowing null: all of them. */
export interface BenchEvent extends Omit<Event, 'sowings'> {
  readonly sowing: string | null;
}

/** Everything recorded, each under its key: `benchKey` of sowing, day (and plant); events under a running number. */
export interface BenchRecords {
  readonly checks: Readonly<Record<string, BenchCheck>>;
  readonly traits: readonly Trait[];
  readonly measurements: Readonly<Record<string, BenchMeasurement>>;
  readonly events: Readonly<Record<string, BenchEvent>>;
}

/** What stood there before a step; null: nothing. */
export interface UndoStep {
  readonly checks: Readonly<Record<string, BenchCheck | null>>;
  readonly traits: readonly Trait[];
  readonly measurements: Readonly<Record<string, BenchMeasurement | null>>;
  readonly events: Readonly<Record<string, BenchEvent | null>>;
}

/** The day that is being recorded: a number of days after sowing, or a date. */
export type RecordedDay = { readonly day: number } | { readonly date: string };

/** A trial with what was recorded of it: plain data, as it is stored on the device. */
export interface BenchSession {
  readonly trial: BenchTrial;
  readonly records: BenchRecords;
  /** Latest last. */
  readonly undo: readonly UndoStep[];
  /** Rises with every change. */
  readonly revision: number;
}
