import type { Comparison, Group } from '../analysis/analysis.ts';

/**
 * Whether a difference was made block by block and so, because a unit is missing, is not that of the two means
 * which stand beside it.
 */
export function isWithinBlocks(
  { units, estimate }: Comparison,
  { treatment, control }: { readonly treatment: Group | null; readonly control: Group | null },
): boolean {
  if (units.kind !== 'block' || estimate === null || treatment?.estimate == null || control?.estimate == null)
    return false;
  return Math.abs(treatment.estimate - control.estimate - estimate) > 1e-9 * Math.max(1, Math.abs(estimate));
}
