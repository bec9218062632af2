import type { Group } from '../analysis/analysis.ts';
import { niceScale, type Scale } from './nice-scale.ts';

/**
 * The axis of values of units or plants: around the values, the estimates and the intervals, of which no end is followed
 * further than the values themselves spread (two units can give an interval of any width); what goes on is cut off with an arrow.
 *
 * @param bounds values that cannot be passed: 0 and 100 for germination
 */
export function groupScale(
  values: readonly (number | null)[],
  groups: readonly Group[],
  bounds: readonly [number, number] = [-Infinity, Infinity],
): Scale {
  const known = [...values, ...groups.map(({ estimate }) => estimate)].filter((value) => value !== null);
  const low = Math.min(...known);
  const high = Math.max(...known);
  const room = high - low || Infinity;
  const limits = groups.flatMap(({ interval }) => [interval?.lower, interval?.upper]).filter((limit) => limit != null);
  const scale = niceScale([...known, ...limits.map((limit) => Math.max(low - room, Math.min(high + room, limit)))]);
  return {
    low: Math.max(bounds[0], scale.low),
    high: Math.min(bounds[1], scale.high),
    ticks: scale.ticks.filter((tick) => tick >= bounds[0] && tick <= bounds[1]),
  };
}
