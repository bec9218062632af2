import type { FileProblems } from '../file-problems.ts';
import type { Sowing } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import type { SowingsTable } from './read-sowings.ts';
import { seedsSown } from './seeds-sown.ts';

/**
 * The sowings of the trial, once it is settled which treatment each had.
 *
 * @param treatmentOf treatment by sowing id; without an entry where none is known
 */
export function sowingsOf(
  { rows }: SowingsTable,
  treatmentOf: ReadonlyMap<string, string>,
  report: FileProblems,
  context: TrialContext,
): Sowing[] {
  return rows.flatMap((row) => {
    if (!row.data) return [];
    const { sowing: id, lot, batch, tray, block, position, label, sown, stored, mass, soak } = row.data;
    const treatment = treatmentOf.get(id) ?? null;
    const inherited = treatment === null ? null : (context.treatments?.get(treatment)?.soakHours ?? null);
    return {
      id,
      lot,
      treatment,
      ...seedsSown(row, report, context.lots?.get(lot) ?? null, context.lots === null),
      batch: batch ?? null,
      tray: tray ?? null,
      block: block ?? null,
      position: position ?? null,
      label: label ?? null,
      sown: sown ?? context.sown,
      stored: stored ?? null,
      mass: mass ?? null,
      soakHours: soak ?? inherited,
      line: row.line,
    };
  });
}
