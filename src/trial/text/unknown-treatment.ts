import type { Refusal } from '../refusal.ts';
import type { Treatment } from '../trial.ts';
import { shown } from './shown.ts';
import { unknownName } from './unknown-name.ts';

/** A treatment that trial.yaml does not list; where its label was written, its id is offered. */
export function unknownTreatment(name: string, treatments: ReadonlyMap<string, Treatment>): Refusal {
  const refusal = unknownName('treatment', name, 'trial.yaml', treatments.keys());
  const labelled = [...treatments.values()].find(({ label }) => label.toLowerCase() === name.toLowerCase());
  return labelled ? { ...refusal, remedy: `That is its label; write its id, ${shown(labelled.id)}.` } : refusal;
}
