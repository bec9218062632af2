import { variance } from '../../statistics/variance.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Side } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * All units of each treatment have one and the same value, or all blocks the same difference, but for rounding:
 * read too coarsely to show how much they vary, so that there is no interval.
 */
export const coarseReadings: Rule = (trial, results) =>
  layoutPairs(
    trial,
    results.filter((result) => !isGermination(result)),
  )
    .filter(({ single }) => !single)
    .flatMap(({ about, result, comparison, treated, control }) => {
      const names = { treatment: treated.treatment, control: control.treatment };
      const tell = (difference: number | null) => {
        const [own, other] = [treated, control].map(({ values }) => values[0]?.value ?? 0);
        const values = { treatment: own ?? 0, control: other ?? 0 };
        return [makeCaveat('coarse-readings', about, { ...names, values, difference, unit: result.unit })];
      };
      if (areAlike(treated) && areAlike(control)) return tell(null);
      const { interval, estimate, units } = comparison;
      return units.kind === 'block' && interval === null && estimate !== null ? tell(estimate) : [];
    });

function areAlike({ values: units }: Side): boolean {
  const values = units.map(({ value }) => value).filter((value) => value !== null);
  return values.length > 1 && values.length === units.length && variance(values) === 0;
}
