import type { Result } from '../analysis/analysis.ts';
import { lotsOf } from '../analysis/lots-of.ts';
import { chartKinds } from '../files/prose/chart-kinds.ts';

/** What a printed page holds: small plots, groups of units, lines of trays with their plants, of which a group takes three more. */
const MOST = { germination: 8, units: 10, trait: 60 };
/** More treatments than this no small plot keeps apart. */
const MOST_TREATMENTS = 6;

/**
 * Which lots of an outcome stand in one figure of a kind (`chartKinds`), side by side: as many as a printed page holds,
 * in their order. Lots that were compared together have their differences in one figure.
 */
export function figureLots(result: Result, kind: string): readonly (readonly string[])[] {
  const lots = lotsOf(result).filter((lot) => chartKinds(result, lot).includes(kind));
  const most = MOST[kind as keyof typeof MOST] ?? 0;
  const figures: string[][] = [];
  let filled = Infinity;
  for (const lot of lots) {
    const size = sizeOf(result, kind, lot);
    if (filled + size > most) {
      figures.push([]);
      filled = 0;
    }
    figures.at(-1)?.push(lot);
    filled += size;
  }
  return figures;
}

function sizeOf({ groups, values }: Result, kind: string, lot: string): number {
  const rows = groups.filter((group) => group.lot === lot).length;
  if (kind === 'germination') return rows > MOST_TREATMENTS ? MOST.germination : 1;
  return kind === 'trait' ? 3 * rows + values.filter((unit) => unit.lot === lot).length : rows;
}
