import type { Comparison, Result } from './analysis.ts';

/** What an author may claim of a comparison: the treatment against the control. */
export const CLAIMS = ['higher', 'lower', 'earlier', 'later', 'same', 'unclear'] as const;
export type Claim = (typeof CLAIMS)[number];

/** The one claim that a comparison carries, and whether only with "probably" inside it. */
export interface CarriedClaim {
  readonly is: Claim;
  readonly probably: boolean;
}

/**
 * What may be claimed of a comparison (wording.md, "What a claim needs"). A direction needs the verdict
 * `different` or `matters`, `same` needs the verdict of that name; a ceiling of `probably` asks for that word, one of
 * `cause-unclear` leaves nothing but `unclear`. Of days (t50, mgt) it is `earlier` or `later`, of all else `higher`
 * or `lower`; of moisture too, where a comparison of the water lost counts the other way round.
 * Of a trial that is not over nothing may be claimed; it has no comparisons.
 */
export function carriedClaim(result: Result, comparison: Comparison): CarriedClaim {
  const { verdict, ceiling, estimate } = comparison;
  const isOpen = verdict === 'untestable' || verdict === 'unclear' || ceiling === 'cause-unclear';
  if (isOpen || estimate === null) return { is: 'unclear', probably: false };
  const probably = ceiling === 'probably';
  if (verdict === 'same') return { is: 'same', probably };
  return { is: direction(result, estimate > 0), probably };
}

function direction({ measure, unit }: Result, above: boolean): Claim {
  if (measure === 't50' || measure === 'mgt') return above ? 'later' : 'earlier';
  const isWaterLost = measure === 'moisture' && unit === '% of mass lost';
  return above !== isWaterLost ? 'higher' : 'lower';
}
