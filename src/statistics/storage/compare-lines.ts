import type { Counted } from '../counted.ts';
import { likelihoodRatioF, type RatioF } from './likelihood-ratio-f.ts';
import { probitFit } from './probit-fit.ts';

/** Seeds that came up in one unit after `time`. */
export interface Timed extends Counted {
  readonly time: number;
}

/** Whether survival lines have one slope, and whether one line does for all of them. */
export interface LineTests {
  readonly slope: RatioF;
  readonly line: RatioF;
}

/**
 * Survival lines of several groups compared: a line each against lines of one slope, and against one line for all.
 *
 * @param groups     units of each group, two groups or more; units that serve several groups stand in each
 * @param dispersion of the fit with a line each
 * @returns null where one of the fits cannot be made
 *
 * Source: methods.md 9; parallel-line analysis in probits, Finney (1971) chapter 6, from memory.
 * Checked against: R `glm` deviances of `group * time`, `group + time` and `time`.
 */
export function compareLines(
  groups: readonly (readonly Timed[])[],
  dispersion: { readonly used: number; readonly dfUsed: number },
): LineTests | null {
  const own = groups.map((units) => probitFit(units.map((unit) => ({ ...unit, x: [1, unit.time] }))));
  const all = groups.flatMap((units, group) => units.map((unit) => ({ ...unit, group })));
  const parallel = probitFit(all.map((unit) => ({ ...unit, x: [...groups.map((_, of) => (of === unit.group ? 1 : 0)), unit.time] }))); // prettier-ignore
  const single = probitFit(all.map((unit) => ({ ...unit, x: [1, unit.time] })));
  if (parallel === null || single === null || own.includes(null)) return null;
  const full = own.reduce((sum, fit) => sum + (fit?.deviance ?? 0), 0);
  const saved = groups.length - 1;
  return {
    slope: likelihoodRatioF(parallel.deviance, full, saved, dispersion),
    line: likelihoodRatioF(single.deviance, full, 2 * saved, dispersion),
  };
}
