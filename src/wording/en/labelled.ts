import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';

/**
 * A label in front of a noun: "Sealed jar seed", "“Sealed jar with silica gel in the fridge” seed",
 * "Soaked seed". A label of more than three words stands in quotation marks, so that it reads as a name.
 */
export function labelled(trial: Trial, treatment: string, noun: string): string {
  const name = label(trial, treatment).trim();
  if (name.split(/\s+/).length > 3) return `“${name}” ${noun}`;
  return `${name.replace(/ seeds?$/i, '')} ${noun}`;
}
