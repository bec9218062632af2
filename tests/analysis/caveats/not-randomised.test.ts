import { expect, test } from 'vitest';
import { notRandomised } from '../../../src/analysis/caveats/not-randomised.ts';
import type { Assignment } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (assignment: Assignment) => {
  const sowing = { container: 'tray', assignment, treated: 'each-sowing', block: null } as const;
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] }, { sowing });
  return notRandomised(trial, [resultOf(trial)]);
};

test.each(['by-hand', 'alternating', 'unknown'] as const)('places given %s are a caution', (assignment) => {
  expect(told(assignment)).toMatchObject([{ weight: 'caution', outcome: null, evidence: { assignment } }]);
});

test.each(['random', 'random-in-blocks'] as const)('places drawn %s are not', (assignment) => {
  expect(told(assignment)).toEqual([]);
});

test('a trial without comparisons claims nothing that could be limited', () => {
  const sowing = { container: 'tray', assignment: 'by-hand', treated: 'each-sowing', block: null } as const;
  expect(notRandomised(germinationTrial({}, { sowing }), [])).toEqual([]);
});
