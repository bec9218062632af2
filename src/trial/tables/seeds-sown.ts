import type * as z from 'zod';
import type { ReadRow } from '../csv/read-rows.ts';
import type { FileProblems } from '../file-problems.ts';
import type { sowingsRow } from '../schema/sowings.ts';
import type { Lot } from '../trial.ts';

/**
 * Seeds sown: as counted, else mass × seeds per gram of the lot, rounded to a whole seed. With neither the
 * number is not known, which is said: the counts are then shown and nothing is compared.
 *
 * @param lotsUnknown trial.yaml does not say rightly which lots there are, which was reported
 */
export function seedsSown(
  row: ReadRow<z.infer<typeof sowingsRow>>,
  report: FileProblems,
  lot: Lot | null,
  lotsUnknown: boolean,
): { readonly seeds: number | null; readonly seedsByMass: boolean } {
  const { seeds, mass } = row.data ?? {};
  if (typeof seeds === 'number') return { seeds, seedsByMass: false };
  const perGram = lot?.seedsPerGram ?? null;
  if (typeof mass === 'number' && perGram !== null) {
    const estimate = Math.round(mass * perGram);
    if (estimate >= 1) return { seeds: estimate, seedsByMass: true };
    report.error(row.place('mass'), {
      rule: 'too-small',
      message: `${mass} g at ${perGram} seeds per gram is less than one seed`,
      remedy: 'Look up the mass, its unit in the heading, and seeds_per_gram in lots.yaml.',
    });
    return { seeds: null, seedsByMass: false };
  }
  const noColumn = row.place('seeds').cell === null && row.place('mass').cell === null; // reported already
  if (noColumn || (lotsUnknown && typeof mass === 'number')) return { seeds: null, seedsByMass: false };
  report.warning(row.place('seeds'), {
    rule: 'seeds-unknown',
    message: 'the number of seeds sown is not known; counts of this sowing are shown but not compared',
    remedy:
      typeof mass === 'number'
        ? 'Give seeds_per_gram of the lot in lots.yaml, or the number of seeds.'
        : 'Give the number of seeds, or their mass.',
  });
  return { seeds: null, seedsByMass: false };
}
