import type { Comparison, Result } from './analysis.ts';
import { hardlyAny } from './hardly-any.ts';
import { detectableByUnits, type DetectableByUnits } from './detectable-by-units.ts';

/**
 * What more units would show, where a finding is open and more of them would settle it.
 *
 * @returns null where the finding is not open, next to nothing came up, or nothing can be said (`detectableByUnits`)
 */
export function leftToSettle(result: Result, comparison: Comparison): DetectableByUnits | null {
  const { verdict, units } = comparison;
  if (verdict !== 'unclear' && verdict !== 'untestable') return null;
  if (verdict === 'unclear' && hardlyAny(result, comparison)) return null;
  const found = detectableByUnits(result, comparison);
  if (found === null || found.steps.length < 2) return null;
  return found.settles.units > Math.min(units.treatment, units.control) ? found : null;
}
