import type { Records } from './check-records.ts';
import { WHOLE_FILE } from './file-problems.ts';
import type { FolderProblems } from './folder-problems.ts';
import { shown } from './text/shown.ts';

/** Sowings must be there once something was sown, and every treatment and lot must have some. */
export function checkSowings({ trialYaml, tables, context, files }: Records, problems: FolderProblems): void {
  const report = problems.in('trial.yaml');
  const { yaml } = trialYaml;
  const { status } = context;
  const weighedOnly = files.has('weighings.csv') && !files.has('counts.csv') && !files.has('measurements.csv');
  if (!files.has('sowings.csv')) {
    const counted = files.has('counts.csv') || files.has('measurements.csv');
    const needed = (status === 'finished' || status === 'growing') && !weighedOnly;
    if (counted || needed) {
      problems.in('sowings.csv').error(WHOLE_FILE, {
        rule: 'sowings-missing',
        message: 'there is no sowings.csv, which lists the containers or rows that were sown',
        remedy: 'Create it with the columns sowing, lot, treatment and seeds, a row for each.',
      });
    }
    return;
  }
  if (problems.in('sowings.csv').hasErrors || problems.in('key.csv').hasErrors || status === 'planned') return;

  const sown = new Set(tables.sowings.map(({ treatment }) => treatment));
  const weighed = new Set(tables.weighings.map(({ treatment }) => treatment));
  const mayBeMissing = tables.keyApart || status === 'abandoned' || (context.storage && status === 'growing');
  [...(context.treatments?.keys() ?? [])].forEach((id, index) => {
    if (mayBeMissing || sown.has(id) || weighed.has(id)) return;
    report.error(yaml.place(['treatments', index]), {
      rule: 'treatment-not-sown',
      message: `no sowing has the treatment ${shown(id)}`,
      remedy: 'Give its sowings this treatment in sowings.csv, or take the treatment out.',
    });
  });
  const lots = new Set([...tables.sowings, ...tables.weighings].map(({ lot }) => lot));
  [...(context.lots?.keys() ?? [])].forEach((id, index) => {
    if (lots.has(id) || status === 'abandoned') return;
    report.warning(yaml.place(['lots', index]), {
      rule: 'lot-not-sown',
      message: `no sowing is of the lot ${shown(id)}`,
      remedy: 'Add its sowings, or take the lot out.',
    });
  });
  if (tables.keyApart && status === 'finished') {
    report.warning(yaml.place(['status']), {
      rule: 'key-apart',
      message: 'the trial is blind and key.csv is not there, so it is taken as growing',
      remedy: 'Put key.csv into the folder once the last count is done.',
    });
  }
  const counted = new Set(tables.counts.map(({ sowing }) => sowing));
  const left = new Set(tables.events.filter(({ action }) => action === 'left-out').flatMap(({ sowings }) => sowings));
  if (status !== 'finished' || counted.size === 0 || problems.in('counts.csv').hasErrors) return;
  for (const { id, line } of tables.sowings) {
    if (counted.has(id) || left.has(id)) continue;
    problems.in('sowings.csv').warning(
      { line, column: 1, cell: null, field: 'sowing' },
      {
        rule: 'never-counted',
        message: `sowing ${shown(id)} stands in no row of counts.csv`,
        remedy:
          'Add its counts, or NC where it was not checked; say in trial.yaml, under deviations, what became of it.',
      },
    );
  }
}
