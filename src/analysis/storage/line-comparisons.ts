import { shrunkDispersion } from '../../statistics/shrunk-dispersion.ts';
import { compareLines } from '../../statistics/storage/compare-lines.ts';
import { probitFit } from '../../statistics/storage/probit-fit.ts';
import type { Trial } from '../../trial/trial.ts';
import type { LineComparison, SurvivalLine } from '../survival-line.ts';
import { lotDesign, type LotDesign } from '../units/lot-design.ts';
import type { UnitGroup } from '../units/unit.ts';
import { distinctGroups } from '../units/distinct-groups.ts';
import { timedUnits } from './timed-units.ts';

/**
 * The survival lines of one lot compared (methods 9): one slope, one line, by likelihood ratio as F on φ* and ν of the
 * fit with a line each. Only where each treatment has a line and two jars or more at each time after the start; the
 * start, where it serves every treatment, stands in every line and counts once in the degrees of freedom.
 *
 * @returns none for a single treatment
 */
export function lineComparisons(
  trial: Trial,
  lot: string,
  groups: readonly UnitGroup[],
  lines: readonly SurvivalLine[],
): readonly LineComparison[] {
  if (lines.length < 2) return [];
  const found = isReplicated(lotDesign(trial, lot), groups) && lines.every(({ ki }) => ki !== null) ? tested(groups, lines) : null; // prettier-ignore
  return (['common-slope', 'common-line'] as const).map((test) => {
    const ratio = found && (test === 'common-slope' ? found.slope : found.line);
    return {
      lot,
      test,
      statistic: ratio?.statistic ?? null,
      df: ratio?.df ?? null,
      p: ratio?.p ?? null,
      pAdjusted: ratio?.p ?? null,
      dispersion: found?.dispersion ?? null,
      ceiling: 'none',
      ceilingFrom: [],
    };
  });
}

function tested(groups: readonly UnitGroup[], lines: readonly SurvivalLine[]) {
  const series = lines.map(({ treatment }) => groups.filter((group) => group.treatment === treatment));
  const timed = series.map((own) => own.flatMap(timedUnits));
  const fits = timed.map((units) => probitFit(units.map((unit) => ({ ...unit, x: [1, unit.time] }))));
  const pearson = fits.reduce((sum, fit) => sum + (fit?.pearson ?? 0), 0);
  const df = distinctGroups(groups).flatMap(timedUnits).length - 2 * lines.length;
  if (df < 1) return null;
  const dispersion = { phi: pearson / df, df, ...shrunkDispersion(pearson, df) };
  const tests = compareLines(timed, dispersion);
  return tests && { ...tests, dispersion };
}

/** Two jars or more that entered, of each treatment at each time after the start; each sowing its own jar where so stored. */
function isReplicated(design: LotDesign, groups: readonly UnitGroup[]): boolean {
  return groups
    .filter(({ stored }) => stored !== null && stored > 0)
    .every(({ treatment, stored, units }) => units.length >= 2 && design.isStoredApart(treatment, stored));
}
