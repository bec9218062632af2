import type { Plan, Trial } from '../../src/trial/trial.ts';

/** The plan that a trial followed to the letter, as raw YAML; override parts of the copy to depart from it. */
export function makePlan(trial: Trial, copy: Readonly<Record<string, unknown>> = {}, parts: Partial<Plan> = {}): Plan {
  return {
    fixed: '2026-04-01',
    digest: 'a1b2',
    computedDigest: 'a1b2',
    copy: {
      question: trial.question,
      lots: trial.lots.map(({ id }) => id),
      treatments: trial.treatments.map(({ id, label, control }) => (control ? { id, label, control } : { id, label })),
      sowing: { container: trial.sowing.container, assignment: trial.sowing.assignment, treated: trial.sowing.treated },
      scoring: { germinated: trial.scoring.germinated, blind: trial.scoring.blind },
      outcomes: trial.outcomes.map(({ id, measure, day, matters }) => ({ id, measure, day, matters })),
      sowings: trial.sowings.map(({ id, lot, treatment, seeds }) => ({ sowing: id, lot, treatment, seeds })),
      seed: 20260401,
      ...copy,
    },
    ...parts,
  };
}
