import type { Analysis, CaveatId } from '../analysis/analysis.ts';

/** What may stand beside a finding on the first page before it gets long. */
const MOST = 3;

/**
 * What limits a trial's primary findings most: the caveats that set their ceilings, then serious ones and cautions about
 * the primary outcome or the whole trial, each once. Notes are left to the report.
 */
export function limitsOfFindings({ results, caveats }: Analysis): readonly CaveatId[] {
  const primary = results.find((result) => result.primary);
  if (!primary) return [];
  const about = caveats.filter(({ outcome }) => outcome === null || outcome === primary.outcome);
  const weighing = (weight: string) => about.filter((caveat) => caveat.weight === weight).map(({ id }) => id);
  const capping = primary.comparisons.flatMap(({ ceilingFrom }) => ceilingFrom);
  return [...new Set([...capping, ...weighing('serious'), ...weighing('caution')])].slice(0, MOST);
}
