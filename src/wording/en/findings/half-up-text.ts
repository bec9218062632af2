import type { Group } from '../../../analysis/analysis.ts';
import { number } from '../number.ts';

/** When half of what came up was up, as far as the checks tell: "between day 3 and day 5", "by day 3". Null where unknown. */
export function halfUpText({ bracket }: Group): string | null {
  if (bracket?.by == null) return null;
  const by = `day ${number(bracket.by)}`;
  return bracket.after === null || bracket.after <= 0 ? `by ${by}` : `between day ${number(bracket.after)} and ${by}`;
}
