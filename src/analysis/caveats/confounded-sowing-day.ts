import type { Sowing } from '../../trial/trial.ts';
import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { separation } from './separation.ts';

/** The treatments were sown on different days, none shared; told of single trays too. */
export const confoundedSowingDay: Rule = (trial, results) =>
  layoutPairs(trial, results).flatMap(({ about, treated, control }) => {
    const values = separation(treated.sowings.map(sownOn), control.sowings.map(sownOn));
    const names = { treatment: treated.treatment, control: control.treatment };
    return values === null ? [] : [makeCaveat('confounded-sowing-day', about, { ...names, values })];
  });

const sownOn = ({ sown }: Sowing): string[] => (sown === null ? [] : [sown]);
