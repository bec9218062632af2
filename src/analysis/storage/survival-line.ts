import { tQuantile } from '../../statistics/distributions/t.ts';
import { shrunkDispersion } from '../../statistics/shrunk-dispersion.ts';
import type { Timed } from '../../statistics/storage/compare-lines.ts';
import { fiellerLimits } from '../../statistics/storage/fieller-limits.ts';
import { probitFit, type ProbitFit } from '../../statistics/storage/probit-fit.ts';
import type { NoHalfLife, SurvivalLine } from '../survival-line.ts';
import { total } from '../units/total.ts';
import type { UnitGroup } from '../units/unit.ts';
import { groupNames } from '../groups/group-names.ts';
import { timedUnits } from './timed-units.ts';

type Fitted = Pick<SurvivalLine, 'ki' | 'slope' | 'sigma' | 'halfLife' | 'dispersion' | 'se' | 'reason'>;

/**
 * The survival line of one treatment of one lot (methods 9): probit of germination on years of storage, its
 * half-life with Fieller limits at 95 %. No half-life is given beyond the tested times.
 *
 * @param groups the treatment at each time tested, in the order of time
 */
export function survivalLine(groups: readonly UnitGroup[]): SurvivalLine {
  const units = groups.flatMap(timedUnits);
  const tests = groups.map((group) => {
    const { count, seeds } = total(timedUnits(group));
    return { stored: group.stored ?? 0, estimate: seeds > 0 ? (100 * count) / seeds : null };
  });
  const known = tests.flatMap(({ stored, estimate }) => (estimate === null ? [] : [{ stored, estimate }]));
  const unfit = whyNoLine(known, units.length);
  const fit = unfit === null ? probitFit(units.map((unit) => ({ ...unit, x: [1, unit.time] }))) : null;
  const { ki, slope, sigma, halfLife, dispersion, se, reason } =
    fit === null ? { ...NOTHING, reason: unfit ?? 'not-settled' } : fitted(fit, units, known);
  const [first] = groups;
  const kinds = groups.flatMap((group) => (group.units.length > 0 ? [groupNames(group).unit] : []));
  return {
    lot: first?.lot ?? '',
    treatment: first?.treatment ?? '',
    ki,
    slope,
    sigma,
    halfLife,
    dispersion,
    se,
    reason,
    unit: kinds.includes('batch') ? 'batch' : (kinds[0] ?? 'sowing'),
    units: units.length,
    tests,
  };
}

const NOTHING = { ki: null, slope: null, sigma: null, halfLife: null, dispersion: null, se: null };

interface Test {
  readonly stored: number;
  readonly estimate: number;
}

/** Three times, two of them strictly between none and all, and a unit more than the line has parameters. */
function whyNoLine(tests: readonly Test[], units: number): NoHalfLife | null {
  const [first, last] = [tests[0], tests.at(-1)];
  if (tests.length < 3 || units < 3 || first === undefined || last === undefined) return 'too-few-tests';
  if (tests.every(({ estimate }) => estimate === 0)) return 'nothing-came-up';
  const between = tests.filter(({ estimate }) => estimate > 0 && estimate < 100);
  if (between.length >= 2) return null;
  if (last.estimate >= first.estimate) return 'no-fall';
  return last.estimate >= 50 ? 'hardly-a-fall' : 'too-steep';
}

function fitted(fit: ProbitFit, units: readonly Timed[], tests: readonly Test[]): Fitted {
  const [ki = 0, slope = 0] = fit.coefficients;
  const df = units.length - 2;
  const dispersion = { phi: fit.pearson / df, df, ...shrunkDispersion(fit.pearson, df) };
  const cell = (row: number, column: number) => dispersion.used * (fit.covariance[row]?.[column] ?? 0);
  const common = {
    ki,
    slope,
    sigma: slope < 0 ? -1 / slope : null,
    dispersion,
    se: { ki: Math.sqrt(cell(0, 0)), slope: Math.sqrt(cell(1, 1)) },
  };
  const without = (reason: NoHalfLife): Fitted => ({ ...common, halfLife: null, reason });
  if (slope >= 0) return without('no-fall');

  const line = { intercept: ki, slope, covariance: [cell(0, 0), cell(0, 1), cell(1, 1)] as const };
  const { estimate, lower, upper, g } = fiellerLimits(line, tQuantile(0.975, dispersion.dfUsed));
  const times = tests.map(({ stored }) => stored);
  if (estimate > Math.max(...times)) return without('not-yet');
  if (estimate < Math.min(...times)) return without('before-first');
  if (g >= 1 || lower === null || upper === null) return without('unbounded');
  return { ...common, halfLife: { estimate, lower, upper, unit: 'years' }, reason: null };
}
