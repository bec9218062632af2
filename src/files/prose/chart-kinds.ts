import type { Result } from '../../analysis/analysis.ts';

/** The kinds of charts that a report has of one outcome in one lot (or in `"all"` together), in the order in which they are read. */
export function chartKinds({ measure, groups }: Result, lot: string): readonly string[] {
  if (lot === 'all') return ['differences'];
  if (measure === 'trait') return ['trait'];
  if (measure === 'storage') return ['survival'];
  const tests = new Set(groups.filter((group) => group.lot === lot).map(({ stored }) => stored));
  return measure === 'germination' && tests.size === 1 ? ['germination', 'units'] : ['units'];
}
