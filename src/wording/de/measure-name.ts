import type { Measure } from '../../trial/trial.ts';

/** A measure in plain words. */
export const measureName = (measure: Measure): string => NAMES[measure];

const NAMES: Readonly<Record<Measure, string>> = {
  germination: 'Aufgegangen',
  t50: 'Tag, bis zu dem die Hälfte aufgegangen war',
  mgt: 'Mittlere Zeit bis zum Aufgehen',
  maguire: 'Keimrate nach Maguire',
  spread: 'Zeit, in der die mittlere Hälfte aufging',
  trait: 'An Pflanzen gemessen',
  moisture: 'Feuchtegehalt des Saatguts',
  storage: 'Keimung über die Lagerzeit',
};
