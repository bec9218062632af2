import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Comparison, Range } from '../../src/analysis/analysis.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { anyTrial } from '../support/any-trial.ts';
import { makeTreatment } from '../support/make-trial.ts';

const runs = { numRuns: 60, seed: 20271 };

test('the order of rows changes no byte of the analysis', () => {
  const shuffledTrial = anyTrial.chain((trial) =>
    fc.record({
      trial: fc.constant(trial),
      sowings: fc.shuffledSubarray([...trial.sowings], { minLength: trial.sowings.length }),
      counts: fc.shuffledSubarray([...trial.counts], { minLength: trial.counts.length }),
      measurements: fc.shuffledSubarray([...trial.measurements], { minLength: trial.measurements.length }),
    }),
  );
  fc.assert(
    fc.property(shuffledTrial, ({ trial, ...shuffled }) => {
      expect(JSON.stringify(analyse({ ...trial, ...shuffled }))).toBe(JSON.stringify(analyse(trial)));
    }),
    runs,
  );
});

test('nothing but numbers and null leaves the analysis, and the trial stays as it was', () => {
  fc.assert(
    fc.property(anyTrial, (trial) => {
      const before = JSON.stringify(trial);
      const analysis = analyse(trial);
      expect(JSON.parse(JSON.stringify(analysis))).toEqual(analysis); // NaN and Infinity would come back as null
      expect(JSON.stringify(trial)).toBe(before);
    }),
    runs,
  );
});

const negated = (range: Range | null): Range | null =>
  range && {
    lower: range.upper === null ? null : -range.upper,
    upper: range.lower === null ? null : -range.lower,
  };
const inverse = (ratio: number | null | undefined) => (ratio ? 1 / ratio : (ratio ?? null));

/** The figures that say the same, or the opposite, once treatment and control swap. */
const figures = ({ estimate, interval, effects, ...comparison }: Comparison, swapped: boolean) => {
  const turn = (value: number | null | undefined) => (value == null ? null : swapped ? -value : value);
  const range = (given: Range | null) =>
    swapped ? negated(given) : given && { lower: given.lower, upper: given.upper };
  return {
    numbers: [
      turn(estimate),
      turn(effects.cohensH),
      turn(effects.hedgesG?.estimate),
      turn(effects.hodgesLehmann),
      swapped ? inverse(effects.riskRatio) : (effects.riskRatio ?? null),
      swapped ? inverse(effects.oddsRatio) : (effects.oddsRatio ?? null),
      ...[interval, comparison.equivalence?.interval ?? null, comparison.welch, comparison.bracket].flatMap((given) => {
        const { lower = null, upper = null } = range(given) ?? {};
        return [lower, upper];
      }),
      comparison.dispersion?.phi ?? null,
      comparison.dispersion?.used ?? null,
      comparison.test?.p ?? null,
      comparison.test?.pAdjusted ?? null,
      comparison.permutation?.p ?? null,
      comparison.lotsDiffer?.p ?? null,
      turn(comparison.withLeftOut?.estimate),
    ],
    words: [comparison.lot, comparison.verdict, comparison.withLeftOut?.verdict, comparison.tipping?.note],
  };
};

test('the finding mirrors when treatment and control swap', () => {
  const treatments = ['packet', 'jar'].map((id) => makeTreatment(id));
  const withControl = (trial: Trial, control: string) =>
    analyse({
      ...trial,
      treatments: treatments.map((treatment) => ({ ...treatment, control: treatment.id === control })),
    });
  fc.assert(
    fc.property(anyTrial, (trial) => {
      const [one, other] = [withControl(trial, 'packet'), withControl(trial, 'jar')];
      for (const [index, result] of one.results.entries()) {
        const mirrored = other.results[index]?.comparisons ?? [];
        expect(mirrored).toHaveLength(result.comparisons.length);
        for (const [at, comparison] of result.comparisons.entries()) {
          const [a, b] = [figures(comparison, false), figures(mirrored[at] ?? comparison, true)];
          expect(b.words).toEqual(a.words);
          for (const [place, value] of a.numbers.entries()) {
            const twin = b.numbers[place] ?? null;
            if (value === null || twin === null) expect(twin).toBe(value);
            else expect(Math.abs(twin - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
          }
        }
      }
    }),
    runs,
  );
});
