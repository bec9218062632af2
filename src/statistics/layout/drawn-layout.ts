import { shuffle } from '../shuffle.ts';

/** What is to be laid out: `each` units of every treatment in every stratum. */
export interface LayoutDesign {
  readonly strata: readonly string[];
  readonly treatments: readonly string[];
  readonly each: number;
  /** As many blocks as `each`, every one holding one unit of each treatment of each stratum. */
  readonly inBlocks: boolean;
}

/** One place, in the order of the places. */
export interface DrawnPlace {
  readonly stratum: string;
  readonly treatment: string;
  /** From 1; null without blocks. */
  readonly block: number | null;
}

/**
 * A layout drawn by lot: complete, or in randomised complete blocks; every layout equally likely. It is drawn in two
 * steps, so that the first can be open while the second stays secret: where each stratum stands, then which
 * treatment is given at each of its places.
 *
 * @param places     random numbers for the strata's places, such as seededRandom
 * @param assignment random numbers for the treatments
 *
 * Source: Fisher (1935), The Design of Experiments; methods.md 11.
 */
export function drawnLayout(
  { strata, treatments, each, inBlocks }: LayoutDesign,
  places: () => number,
  assignment: () => number,
): DrawnPlace[] {
  const repeated = (count: number) =>
    strata.flatMap((stratum) => Array<string>(count * treatments.length).fill(stratum));
  const order = inBlocks
    ? Array.from({ length: each }, (_, index) =>
        shuffle(repeated(1), places).map((stratum) => ({ stratum, block: index + 1 })),
      ).flat()
    : shuffle(repeated(each), places).map((stratum) => ({ stratum, block: null }));

  const drawn = new Map<string, string[]>();
  const keyOf = ({ stratum, block }: { stratum: string; block: number | null }) => JSON.stringify([block, stratum]);
  for (const key of new Set(order.map(keyOf))) {
    const units = treatments.flatMap((treatment) => Array<string>(inBlocks ? 1 : each).fill(treatment));
    drawn.set(key, shuffle(units, assignment));
  }
  return order.map((place) => ({ ...place, treatment: drawn.get(keyOf(place))?.shift() ?? '' }));
}
