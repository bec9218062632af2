import { mean } from 'simple-statistics';
import { checkValues } from './check-values.ts';
import { variance } from './variance.ts';

/** Mean squares between and within groups, with their degrees of freedom. */
export interface OneWay {
  readonly between: number;
  readonly within: number;
  readonly df: readonly [number, number];
}

/**
 * One-way analysis of variance, from deviations so that large values keep their digits.
 *
 * @param groups values by group; every group has one or more
 * @returns null with fewer than two groups or no group of two or more
 * @throws {RangeError} when a group is empty or holds what is not a finite number
 *
 * Source: Fisher (1925). Checked against: certified values of NIST StRD (SiRstv, AtmWtAg).
 */
export function oneWayAnalysis(groups: readonly (readonly number[])[]): OneWay | null {
  for (const group of groups) checkValues('oneWayAnalysis', group, 1);
  const total = groups.reduce((sum, group) => sum + group.length, 0);
  if (groups.length < 2 || total === groups.length) return null;

  const first = groups[0]?.[0] ?? 0;
  const means = groups.map((group) => mean(group.map((value) => value - first)));
  const centre = groups.reduce((sum, group, index) => sum + group.length * (means[index] ?? 0), 0) / total;
  const between = groups.reduce((sum, group, index) => sum + group.length * ((means[index] ?? 0) - centre) ** 2, 0);
  const within = groups.reduce((sum, group) => sum + (group.length > 1 ? (group.length - 1) * variance(group) : 0), 0);
  const df = [groups.length - 1, total - groups.length] as const;
  return { between: between / df[0], within: within / df[1], df };
}
