import type { Sowing, Trial } from '../../trial/trial.ts';
import type { Group, Result } from '../analysis.ts';
import { lotDesign } from '../units/lot-design.ts';

/** Sowings of a group that entered an outcome. */
export function enteredOf(
  trial: Trial,
  { leftOut }: Result,
  { lot, treatment, stored }: Pick<Group, 'lot' | 'treatment' | 'stored'>,
): readonly Sowing[] {
  const sown = lotDesign(trial, lot).sowingsOf(treatment, stored);
  if (leftOut.length === 0) return sown;
  const out = new Set(leftOut.map(({ sowing }) => sowing));
  return sown.filter(({ id }) => !out.has(id));
}
