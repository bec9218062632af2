import { readTable } from '../csv/read-table.ts';
import { FileProblems } from '../file-problems.ts';
import type { Problem } from '../problem.ts';
import { mergeFates } from '../tables/merge-fates.ts';
import { readCounts } from '../tables/read-counts.ts';
import { readEvents } from '../tables/read-events.ts';
import { readMeasurements } from '../tables/read-measurements.ts';
import { settleCounts } from '../tables/settle-counts.ts';
import type { Count } from '../trial.ts';
import type { BenchEvent, BenchMeasurement, BenchRecords, BenchTrial } from './bench.ts';
import { benchKey } from './bench-key.ts';
import { benchNames } from './bench-names.ts';
import { fileKind, type FileKind } from './file-kind.ts';

export interface BenchFile {
  /** Null: none of our tables. */
  readonly kind: FileKind | null;
  /** Null where an error stands among the problems, and for sowings.csv. */
  readonly records: BenchRecords | null;
  readonly problems: readonly Problem[];
}

/**
 * counts.csv, measurements.csv or events.csv of a trial that is open, read by the very readers that the site and
 * `check` use. Sowings may be named by id or by label.
 *
 * @param name of the file, for the problems
 */
export function readBenchFile(name: string, bytes: Uint8Array, trial: BenchTrial): BenchFile {
  const report = new FileProblems(name);
  const table = readTable(name, bytes, new FileProblems(name));
  const kind = table && fileKind(table);
  const read = kind && kind !== 'sowings' ? READERS[kind](bytes, report, trial) : null;
  if (table === null) readTable(name, bytes, report); // for what it says
  return { kind, records: report.hasErrors ? null : read && { ...NOTHING, ...read }, problems: report.problems };
}

const NOTHING: BenchRecords = { checks: {}, traits: [], measurements: {}, events: {} };

type Reader = (bytes: Uint8Array, report: FileProblems, trial: BenchTrial) => Partial<BenchRecords>;

const READERS: Readonly<Record<Exclude<FileKind, 'sowings'>, Reader>> = {
  counts(bytes, report, trial) {
    const names = benchNames(trial);
    const checks = mergeFates(readCounts(bytes, report, names)?.checks ?? [], []);
    const context = { status: 'growing', sown: trial.sown, blind: 'unknown', counts: trial.counts, lots: null, treatments: null, storage: false } as const; // prettier-ignore
    const settled = settleCounts(checks, names, context).filter(isAnswer(checks));
    return { checks: Object.fromEntries(settled.map((count) => [benchKey(count.sowing, count.day), checkOf(count)])) };
  },
  measurements(bytes, report, trial) {
    const wanted = new Set(trial.traits.map(({ column }) => column.toLowerCase()));
    const read = readMeasurements(bytes, report, benchNames(trial), wanted);
    const rows = (read?.measurements ?? []).map(({ line: _line, ...row }): BenchMeasurement => ({
      ...row,
      plant: row.plant && unquoted(row.plant),
    }));
    return {
      traits: read?.traits ?? [],
      measurements: Object.fromEntries(rows.map((row) => [benchKey(row.sowing, row.day, row.plant), row])),
    };
  },
  events(bytes, report, trial) {
    const read = readEvents(bytes, report, benchNames(trial), trial.sown);
    const events = (read?.events ?? []).map(({ sowings, what, ...event }): BenchEvent => ({
      ...event,
      what: unquoted(what),
      sowing: sowings[0] ?? null,
    }));
    return { events: Object.fromEntries(events.map((event, index) => [String(index + 1), event])) };
  },
};

/** An empty cell is no answer yet, NC is one; a row with anything else in it is kept. */
function isAnswer(checks: readonly { sowing: string; day: number; empty: boolean }[]) {
  const empty = new Set(checks.filter((check) => check.empty).map(({ sowing, day }) => benchKey(sowing, day)));
  return ({ sowing, day, germinated, abnormal, hard, fresh, dead, note }: Count) =>
    [germinated, abnormal, hard, fresh, dead, note].some((value) => value !== null) ||
    !empty.has(benchKey(sowing, day));
}

function checkOf({ file: _file, line: _line, scorer, note, ...check }: Count) {
  return { ...check, scorer: scorer && unquoted(scorer), note: note && unquoted(note) };
}

/** Takes off the apostrophe that keeps spreadsheets from running a text as a formula. */
const unquoted = (text: string): string => text.replace(/^'(?='*[=+\-@])/, '');
