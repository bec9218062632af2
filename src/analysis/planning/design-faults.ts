import type { PlanDesign } from './plan-design.ts';
import { treatedValue } from './treated-value.ts';

/** What makes a design one that cannot be worked out, by the field to change. */
export type DesignFault =
  | 'base'
  | 'matters'
  | 'no-room'
  | 'units'
  | 'seeds'
  | 'spread'
  | 'spread-above-seeds'
  | 'crops'
  | 'every'
  | 'every-late'
  | 'germination';

/** Largest numbers that are worked out; a simulation of more would take too long to wait for. */
export const MOST = { units: 50, seeds: 1000, crops: 20, checks: 400 };

/** Everything that is wrong with a design; empty where it can be worked out. */
export function designFaults(design: PlanDesign): readonly DesignFault[] {
  const { measure, base, matters, units, seeds, spread, crops, timing } = design;
  const isShare = measure === 'germination';
  const faults: DesignFault[] = [];
  const need = (isMet: boolean, fault: DesignFault) => isMet || faults.push(fault);

  const baseIs = base > 0 && base < (isShare ? 100 : Infinity);
  const mattersIs = matters > 0 && matters < Infinity;
  need(baseIs, 'base');
  need(mattersIs, 'matters');
  need(!baseIs || !mattersIs || treatedValue(design) !== null, 'no-room');
  need(isWhole(units, MOST.units), 'units');
  if (measure !== 'trait') need(isWhole(seeds, MOST.seeds), 'seeds');
  need(isShare ? spread >= 1 && spread < Infinity : spread > 0 && spread < Infinity, 'spread');
  if (isShare) need(!(spread > 1) || !(seeds >= 1) || spread < seeds, 'spread-above-seeds');
  need(isWhole(crops, MOST.crops), 'crops');
  if (measure === 't50') {
    const { every, seedSpread, germination } = timing ?? { every: NaN, seedSpread: NaN, germination: NaN };
    need(every > 0 && seedSpread > 0 && (base + matters) / every < MOST.checks / 4, 'every');
    need(!(every > 0) || every < base, 'every-late');
    need(germination > 0 && germination <= 100, 'germination');
  }
  return faults;
}

const isWhole = (value: number, most: number) => Number.isInteger(value) && value >= 1 && value <= most;
