import { checkSowings } from './check-sowings.ts';
import { WHOLE_FILE } from './file-problems.ts';
import type { FolderProblems } from './folder-problems.ts';
import { columnName } from './column-name.ts';
import type { Tables } from './read-tables.ts';
import type { TrialYaml } from './read-trial-yaml.ts';
import { sha256Hex } from './sha256-hex.ts';
import { shown } from './text/shown.ts';
import { unknownName } from './text/unknown-name.ts';
import type { TrialContext } from './trial-context.ts';
import type { Measure, Plan } from './trial.ts';

/** The file that each measure is computed from. */
const NEEDS: Readonly<Record<Measure, string>> = {
  germination: 'counts.csv',
  t50: 'counts.csv',
  mgt: 'counts.csv',
  maguire: 'counts.csv',
  spread: 'counts.csv',
  trait: 'measurements.csv',
  moisture: 'weighings.csv',
  storage: 'counts.csv',
};
const RECORDS = ['counts.csv', 'measurements.csv', 'weighings.csv'];

export interface Records {
  readonly trialYaml: TrialYaml;
  readonly tables: Tables;
  readonly context: TrialContext;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly plan: Plan | null;
}

/** What the files of a trial must say together: the records that its state and outcomes need. */
export function checkRecords(records: Records, problems: FolderProblems): void {
  const { trialYaml, tables, context, files, plan } = records;
  const report = problems.in('trial.yaml');
  const { yaml, given } = trialYaml;
  const has = (name: string) => files.has(name);

  checkSowings(records, problems);
  if (context.status === 'finished' && !RECORDS.some(has)) {
    report.error(yaml.place(['status']), {
      rule: 'no-records',
      message: 'the trial is finished, but there is none of counts.csv, measurements.csv and weighings.csv',
      remedy: 'Add what was counted, measured or weighed, or write "status: growing".',
    });
  } else if (context.status === 'finished' && !problems.hasErrors && isEmpty(tables)) {
    report.error(yaml.place(['status']), {
      rule: 'no-records',
      message: 'the trial is finished, but its tables hold no count, measurement or weighing',
      remedy: 'Fill in what was counted, measured or weighed, or write "status: growing".',
    });
  }
  given.outcomes?.forEach(({ measure, column }, index) => {
    const needed = NEEDS[measure];
    if (context.status === 'finished' && !has(needed) && RECORDS.some(has)) {
      report.error(yaml.place(['outcomes', index, 'measure']), {
        rule: 'records-missing',
        message: `the measure "${measure}" needs ${needed}, which is not there`,
        remedy: `Add ${needed}, or take the outcome out.`,
      });
    }
    const headings = tables.traits.map((trait) => trait.column);
    const wanted = columnName(column ?? '').toLowerCase();
    const readable = has('measurements.csv') && !problems.in('measurements.csv').hasErrors;
    if (measure === 'trait' && column && readable && !headings.some((name) => name.toLowerCase() === wanted)) {
      report.error(
        yaml.place(['outcomes', index, 'column']),
        unknownName('column', column, 'measurements.csv', headings),
      );
    }
  });
  const stored = tables.sowings.filter((sowing) => sowing.stored !== null);
  const series = given.outcomes?.findIndex(({ measure }) => measure === 'storage') ?? -1;
  if (
    series >= 0 &&
    tables.sowings.length > 0 &&
    stored.length < tables.sowings.length &&
    !problems.in('sowings.csv').hasErrors
  ) {
    const missing = tables.sowings.find((sowing) => sowing.stored === null);
    problems.in('sowings.csv').error(
      { line: missing?.line ?? null, column: 1, cell: null, field: 'stored' },
      {
        rule: 'storage-time-missing',
        message: `sowing ${shown(missing?.id ?? '')} has no storage time, which the outcome ${shown(given.outcomes?.[series]?.id ?? '')} needs of every sowing`,
        remedy:
          'Add the column "stored (years)" with the time in storage when each was sown: 0 for a sowing at the start.',
      },
    );
  }
  checkKey(plan, files.get('key.csv'), problems);
}

function isEmpty({ counts, measurements, weighings }: Tables): boolean {
  const counted = counts.some(({ germinated }) => germinated !== null);
  return !counted && measurements.length === 0 && weighings.length === 0;
}

/** The key that was sealed with the plan must be the one that was opened. */
function checkKey(plan: Plan | null, key: Uint8Array | undefined, problems: FolderProblems): void {
  const sealed = plan?.copy.key_sha256;
  if (typeof sealed !== 'string' || !key || sha256Hex(key) === sealed) return;
  problems.in('key.csv').warning(WHOLE_FILE, {
    rule: 'key-digest',
    message:
      'this is not the key that was sealed with the plan: its SHA-256 is another one than key_sha256 in plan.yaml',
    remedy: 'Put the key back as the tool wrote it, byte for byte, or say among the deviations why it was changed.',
  });
}
