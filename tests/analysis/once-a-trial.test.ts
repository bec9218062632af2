import { expect, test, vi } from 'vitest';
import { onceATrial } from '../../src/analysis/once-a-trial.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeTrial } from '../support/make-trial.ts';

test('works out once for each trial, nothing included, and anew for another', () => {
  const f = vi.fn(({ sown }: Trial) => sown);
  const g = onceATrial(f);
  const trial = makeTrial({ sown: null });
  expect([g(trial), g(trial), g({ ...trial, sown: '2026-04-04' }), g(trial)]).toEqual([null, null, '2026-04-04', null]);
  expect(f).toHaveBeenCalledTimes(2);
});
