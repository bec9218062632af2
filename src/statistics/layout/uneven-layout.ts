/** Units of each treatment at each place, within one block: `treated[v]` and `control[v]` at place v. */
export interface BlockLayout {
  readonly treated: readonly number[];
  readonly control: readonly number[];
}

/**
 * How unevenly two treatments are spread over places, and how often a random layout is at least as uneven.
 * Unevenness is the share of one treatment's units that would have to change place for both to be spread
 * alike: ½ Σ |share of treated at v − share of control at v|, 0 (alike) to 1 (no place shared).
 *
 * @param blocks one entry a block within which units were assigned at random, a single one where there are no blocks
 * @returns unevenness and chance, both 0 to 1; chance is null where there are more than 20 000 layouts to tell apart
 * @throws {RangeError} when a treatment has no unit
 *
 * Source: total variation distance; its distribution over all assignments is a product of multivariate
 * hypergeometric ones, added up exactly. Checked against: R `dhyper` for two places, full enumeration otherwise.
 */
export function unevenLayout(blocks: readonly BlockLayout[]): {
  readonly unevenness: number;
  readonly chance: number | null;
} {
  const treated = totals(blocks.map((block) => block.treated));
  const control = totals(blocks.map((block) => block.control));
  const all = treated.map((count, place) => count + (control[place] ?? 0));
  const units = { treated: sum(treated), control: sum(control) };
  if (units.treated === 0 || units.control === 0) throw new RangeError('unevenLayout needs a unit of each treatment');

  const unevennessOf = (counts: readonly number[]) =>
    sum(counts.map((count, place) => Math.abs(count / units.treated - ((all[place] ?? 0) - count) / units.control))) /
    2;
  const unevenness = unevennessOf(treated);

  const layouts = allLayouts(blocks);
  if (layouts === null) return { unevenness, chance: null };
  const isAsUneven = ({ counts }: Layout) => unevennessOf(counts) >= unevenness - 1e-9;
  const ways = ({ ways }: Layout) => ways;
  return { unevenness, chance: sum(layouts.filter(isAsUneven).map(ways)) / sum(layouts.map(ways)) };
}

/** Treated units at each place, and in how many ways that comes about. */
interface Layout {
  readonly counts: readonly number[];
  readonly ways: number;
}

const MOST_LAYOUTS = 20_000;

function allLayouts(blocks: readonly BlockLayout[]): Layout[] | null {
  let layouts: Layout[] | null = [{ counts: (blocks[0]?.treated ?? []).map(() => 0), ways: 1 }];
  for (const block of blocks) {
    const within = layoutsWithin(block);
    if (within === null || layouts.length * within.length > MOST_LAYOUTS) return null;
    const merged = new Map<string, Layout>();
    for (const before of layouts) {
      for (const added of within) {
        const counts = before.counts.map((count, place) => count + (added.counts[place] ?? 0));
        const key = counts.join();
        merged.set(key, { counts, ways: before.ways * added.ways + (merged.get(key)?.ways ?? 0) });
      }
    }
    layouts = [...merged.values()];
  }
  return layouts;
}

/** All ways to choose the block's treated units among its places. */
function layoutsWithin({ treated, control }: BlockLayout): Layout[] | null {
  const wanted = sum(treated);
  let layouts: Layout[] = [{ counts: [], ways: 1 }];
  for (const [place, count] of treated.entries()) {
    const size = count + (control[place] ?? 0);
    layouts = layouts.flatMap(({ counts, ways }) =>
      Array.from({ length: Math.min(size, wanted - sum(counts)) + 1 }, (_, chosen) => ({
        counts: [...counts, chosen],
        ways: ways * choose(size, chosen),
      })),
    );
    if (layouts.length > MOST_LAYOUTS) return null;
  }
  return layouts.filter(({ counts }) => sum(counts) === wanted);
}

function choose(from: number, take: number): number {
  let ways = 1;
  for (let index = 1; index <= take; index++) ways = (ways * (from - take + index)) / index;
  return Math.round(ways);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const totals = (rows: readonly (readonly number[])[]): number[] =>
  (rows[0] ?? []).map((_, place) => sum(rows.map((row) => row[place] ?? 0)));
