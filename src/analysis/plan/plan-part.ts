/**
 * One part of a plan (a lot, a treatment, an outcome, a sowing …) as text, so that what was planned and
 * what was done compare alike whatever way they were written down.
 */
export interface PlanPart {
  /** Path in plan.yaml: `outcomes.germination`; empty for what stands at the top. */
  readonly path: string;
  readonly name: string;
  readonly fields: Readonly<Record<string, string | null>>;
}

/** A YAML scalar as text with single blanks; null where there is none. Lists are joined by commas. */
export function textOf(value: unknown): string | null {
  if (Array.isArray(value)) return value.length === 0 ? null : value.map(textOf).join(', ');
  if (value === null || value === undefined || typeof value === 'object') return null;
  const text = String(value).trim().replaceAll(/\s+/g, ' ');
  return text === '' ? null : text;
}

/** `yes` or `no` for a switch that is off where it is not given. */
export const yesOrNo = (value: unknown): string => (value === true || value === 'yes' ? 'yes' : 'no');

/** An outcome's day as text: `14`, or `cress 6, leek 14` where lots differ; null where none is set. */
export function dayText(day: unknown, lots: readonly string[]): string | null {
  if (typeof day !== 'object' || day === null) return textOf(day);
  const days = lots.toSorted().map((lot) => ({ lot, day: textOf((day as Record<string, unknown>)[lot]) }));
  const distinct = new Set(days.map(({ day }) => day));
  return distinct.size === 1 ? (days[0]?.day ?? null) : days.map(({ lot, day }) => `${lot} ${day ?? '–'}`).join(', ');
}
