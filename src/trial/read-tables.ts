import type { FolderProblems } from './folder-problems.ts';
import { columnName } from './column-name.ts';
import type { TrialFile } from './read-trial-yaml.ts';
import { mergeFates } from './tables/merge-fates.ts';
import { readCounts } from './tables/read-counts.ts';
import { readEvents } from './tables/read-events.ts';
import { readFates } from './tables/read-fates.ts';
import { readKey } from './tables/read-key.ts';
import { readMeasurements } from './tables/read-measurements.ts';
import { readSowings } from './tables/read-sowings.ts';
import { readWeighings } from './tables/read-weighings.ts';
import { settleCounts } from './tables/settle-counts.ts';
import { settleTreatments } from './tables/settle-treatments.ts';
import { sowingsOf } from './tables/sowings-of.ts';
import { SowingNames } from './tables/sowing-names.ts';
import type { TrialContext } from './trial-context.ts';
import type { Count, Event, Measurement, ReadAs, Sowing, Trait, Weighing } from './trial.ts';

/** All CSV files of a trial. */
export interface Tables {
  readonly sowings: readonly Sowing[];
  /** Null where sowings.csv is missing or could not be read. */
  readonly names: SowingNames | null;
  readonly fromKey: boolean;
  readonly keyApart: boolean;
  readonly counts: readonly Count[];
  readonly traits: readonly Trait[];
  readonly measurements: readonly Measurement[];
  readonly weighings: readonly Weighing[];
  readonly events: readonly Event[];
  readonly readAs: readonly ReadAs[];
}

/** Reads the CSV files that are there, each checked by itself and against sowings.csv and trial.yaml. */
export function readTables(
  files: ReadonlyMap<string, Uint8Array>,
  problems: FolderProblems,
  context: TrialContext,
  outcomes: TrialFile['outcomes'],
): Tables {
  const sowings = read('sowings.csv', (bytes, report) => readSowings(bytes, report, context));
  const settled = sowings && settleTreatments(sowings, files.get('key.csv'), problems, context);
  const known = sowings && settled ? sowingsOf(sowings, settled.treatmentOf, problems.in('sowings.csv'), context) : [];
  const key = files.get('key.csv');
  if (!sowings && key) readKey(key, problems.in('key.csv'), context, null, []); // for its own mistakes
  const names = sowings && new SowingNames(sowings.idOf, known);

  const counts = read('counts.csv', (bytes, report) => readCounts(bytes, report, names));
  const fates = read('fates.csv', (bytes, report) => readFates(bytes, report, names));
  const checks = mergeFates(counts?.checks ?? [], fates?.checks ?? []);
  const wanted = new Set((outcomes ?? []).flatMap(({ column }) => (column ? [columnName(column).toLowerCase()] : [])));
  const measured = read('measurements.csv', (bytes, report) => readMeasurements(bytes, report, names, wanted));
  const weighed = read('weighings.csv', (bytes, report) => readWeighings(bytes, report, context));
  const noted = read('events.csv', (bytes, report) => readEvents(bytes, report, names, context.sown));

  return {
    sowings: known,
    names,
    fromKey: settled?.fromKey ?? false,
    keyApart: settled?.keyApart ?? false,
    counts: settleCounts(checks, names, context),
    traits: measured?.traits ?? [],
    measurements: measured?.measurements ?? [],
    weighings: weighed?.weighings ?? [],
    events: noted?.events ?? [],
    readAs: [sowings, counts, fates, measured, weighed, noted]
      .flatMap((table) => (table ? [table.readAs] : []))
      .concat(settled?.readAs ?? []),
  };

  function read<Result>(name: string, reader: (bytes: Uint8Array, report: ReturnType<typeof problems.in>) => Result) {
    const bytes = files.get(name);
    return bytes ? reader(bytes, problems.in(name)) : null;
  }
}
