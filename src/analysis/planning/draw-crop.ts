import { betaBinomialDraw } from '../../statistics/draws/beta-binomial-draw.ts';
import { normalDraw } from '../../statistics/draws/normal-draw.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Unit } from '../units/unit.ts';
import { drawTimes } from './draw-times.ts';
import type { PlanDesign } from './plan-design.ts';

/**
 * The trays of one crop as they could turn out. Germination: beta-binomial with φ. Traits: normal tray means. Times:
 * normal times of seeds around a normal tray median, seen only at the checks.
 *
 * @param treated true value of the treatment; that of the control is `base`
 * @param lot     id of the crop
 * @param random  numbers between 0 and 1
 */
export function drawCrop(design: PlanDesign, treated: number, lot: string, random: () => number): Pair {
  const group = (treatment: string, value: number) => ({
    lot,
    treatment,
    stored: null,
    units: Array.from({ length: design.units }, (_, index) => ({
      ...NOTHING,
      lot,
      treatment,
      id: `${lot} ${treatment} ${index + 1}`,
      block: design.inBlocks ? String(index + 1) : null,
      ...drawUnit(design, value, random),
    })).filter(({ count }) => design.timing === null || count !== 0), // without a seedling there is no time
  });
  return { lot, stored: null, treated: group('treated', treated), control: group('control', design.base), others: [] };
}

type Drawn = Pick<Unit, 'seeds' | 'count' | 'checks' | 'value'>;

function drawUnit(design: PlanDesign, value: number, random: () => number): Drawn {
  const { measure, seeds, spread, timing } = design;
  if (measure === 'germination') {
    const count = betaBinomialDraw(seeds, value / 100, spread, random);
    return { seeds, count, checks: [], value: (100 * count) / seeds };
  }
  if (timing !== null) return drawTimes(design, timing, value, random);
  return { seeds: null, count: null, checks: [], value: value + spread * normalDraw(random) };
}

const NOTHING = {
  kind: 'sowing',
  stored: null,
  spansBlocks: false,
  sowings: [],
  plants: [],
  toldApart: false,
} as const;
