import type { FolderProblems } from '../folder-problems.ts';
import { shown } from '../text/shown.ts';
import type { ReadAs } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import { readKey } from './read-key.ts';
import type { SowingsTable } from './read-sowings.ts';

export interface SettledTreatments {
  readonly treatmentOf: ReadonlyMap<string, string>;
  /** Treatments came from key.csv. */
  readonly fromKey: boolean;
  /** A blind trial whose key is still kept apart: no treatment is known. */
  readonly keyApart: boolean;
  readonly readAs: readonly ReadAs[];
}

/**
 * The treatment of each sowing, from sowings.csv or key.csv. A sowing without one is an error, unless
 * the trial is blind and its key kept apart (in a storage series that of the test under way), or the sowing is the
 * start of a storage series.
 */
export function settleTreatments(
  { rows, idOf, hasTreatments }: SowingsTable,
  keyBytes: Uint8Array | undefined,
  problems: FolderProblems,
  context: TrialContext,
): SettledTreatments {
  const report = problems.in('sowings.csv');
  const treatmentOf = new Map(
    rows.flatMap(({ data }) => (data?.treatment ? [[data.sowing, data.treatment] as const] : [])),
  );
  const open = rows.filter(({ data }) => data && !data.treatment && data.stored !== 0);
  // The key of the test that is being counted is kept apart; those of earlier tests are known.
  const isGoingOn = context.storage && context.status === 'growing' && context.blind === 'yes';

  if (keyBytes) {
    const needed = (isGoingOn ? [] : open).map(({ data }) => data?.sowing ?? '');
    const key = readKey(keyBytes, problems.in('key.csv'), context, idOf, needed);
    const fromKey = open.length > 0;
    const rowOf = new Map(rows.map((row) => [row.data?.sowing, row]));
    for (const [id, treatment] of key?.treatments ?? []) {
      const said = treatmentOf.get(id);
      const row = rowOf.get(id);
      if (said !== undefined && treatment !== null && said !== treatment && row) {
        report.error(row.place('treatment'), {
          rule: 'given-twice',
          message: `sowing ${shown(id)} has the treatment ${shown(said)} here and ${shown(treatment)} in key.csv`,
          remedy: 'Keep the right one of the two.',
        });
      }
      if (treatment !== null) treatmentOf.set(id, treatment);
    }
    return { treatmentOf, fromKey, keyApart: false, readAs: key ? [key.readAs] : [] };
  }

  const keyApart = context.blind === 'yes' && (!hasTreatments || isGoingOn) && open.length > 0;
  for (const row of keyApart ? [] : open) {
    report.error(row.place('treatment'), {
      rule: 'treatment-missing',
      message: `sowing ${shown(row.text('sowing'))} has no treatment, and there is no key.csv`,
      remedy: 'Write the treatment into this row, or add key.csv with the columns sowing and treatment.',
    });
  }
  return { treatmentOf, fromKey: false, keyApart, readAs: [] };
}
