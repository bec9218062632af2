import { cohensH } from '../../statistics/cohens-h.ts';
import type { Counted } from '../../statistics/counted.ts';
import { oddsRatio } from '../../statistics/odds-ratio.ts';
import { riskRatio } from '../../statistics/risk-ratio.ts';
import type { Comparison } from '../analysis.ts';

/** Effect sizes of a germination comparison, from the totals of both groups. They carry no interval. */
export function germinationEffects(treated: Counted, control: Counted): Pick<Comparison, 'effects' | 'halfAdded'> {
  const shares = [treated.count / treated.seeds, control.count / control.seeds] as const;
  const { ratio, halfAdded } = oddsRatio(treated, control);
  return {
    effects: { riskRatio: riskRatio(...shares), oddsRatio: ratio, cohensH: cohensH(...shares) },
    halfAdded,
  };
}
