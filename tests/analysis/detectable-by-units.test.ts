import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import { detectableByUnits } from '../../src/analysis/detectable-by-units.ts';
import { demoTrials } from '../files/prose/prose-said.ts';

const all = demoTrials.flatMap((trial) =>
  analyse(trial).results.flatMap((result) =>
    result.comparisons.flatMap((comparison) => {
      const found = detectableByUnits(result, comparison);
      return found ? [{ name: `${trial.id} ${result.outcome} ${comparison.lot}`, comparison, found }] : [];
    }),
  ),
);

test('every comparison in one lot that says what would settle it is drawn', () => {
  const said = demoTrials.flatMap((trial) =>
    analyse(trial).results.flatMap(({ comparisons }) =>
      comparisons.filter(({ lot, wouldSettle, repeatWith }) => lot !== 'all' && (wouldSettle ?? repeatWith)),
    ),
  );
  expect(all.length).toBe(said.length);
  expect(all.length).toBeGreaterThan(5);
});

test.each(all)(
  '$name: the last step settles it, none before does, and more units show less',
  ({ found, comparison }) => {
    const { steps, settles, assumed } = found;
    expect(steps.at(-1)?.units).toBe(settles.units);
    expect(steps.at(-1)?.detectable).toBeLessThanOrEqual(settles.difference + 1e-9);
    for (const { detectable } of steps.slice(0, -1)) expect(detectable).toBeGreaterThan(settles.difference);
    expect(steps.map(({ detectable }) => detectable)).toEqual(
      steps.map(({ detectable }) => detectable).toSorted((a, b) => b - a),
    );
    expect(steps.length).toBeLessThanOrEqual(7);
    expect(assumed).toBe(comparison.verdict === 'untestable');
  },
);

test('what the trial could show by itself is the step of its own size', () => {
  const own = all.find(({ name }) => name.startsWith('carrots'));
  const step = own?.found.steps.find(({ units }) => units === own.comparison.units.treatment);
  expect(step?.detectable).toBeGreaterThan(own?.found.settles.difference ?? NaN);
});
