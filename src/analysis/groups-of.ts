import type { Comparison, Group, Result } from './analysis.ts';

/** The two groups of a comparison; null each for a comparison pooled over lots, which has none of its own. */
export function groupsOf(
  result: Result,
  { lot, stored, treatment, control }: Comparison,
): { treatment: Group | null; control: Group | null } {
  const find = (id: string) =>
    result.groups.find((group) => group.lot === lot && group.treatment === id && group.stored === stored) ?? null;
  return { treatment: find(treatment), control: find(control) };
}
