import type { Trial } from '../../trial/trial.ts';
import type { Result } from '../analysis.ts';
import type { Apart } from './evidence.ts';
import type { Pair } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import { separation } from './separation.ts';

/** A comparison whose treatments a factor keeps apart, with the values of each. */
export interface ApartPair<T> {
  readonly pair: Pair;
  readonly evidence: Apart<T>;
}

/**
 * Comparisons with more than one unit of each in which a factor of the sowings keeps the treatments apart.
 *
 * @param valuesOf the values that each sowing of the treatment and of the control has; empty where not recorded
 */
export function apartPairs<T>(
  trial: Trial,
  results: readonly Result[],
  valuesOf: (pair: Pair) => {
    readonly treated: readonly (readonly T[])[];
    readonly control: readonly (readonly T[])[];
  },
): readonly ApartPair<T>[] {
  return layoutPairs(trial, results)
    .filter(({ single }) => !single)
    .flatMap((pair) => {
      const { treated, control } = valuesOf(pair);
      const values = separation(treated, control);
      const evidence = { treatment: pair.treated.treatment, control: pair.control.treatment };
      return values === null ? [] : [{ pair, evidence: { ...evidence, values } }];
    });
}
