import { drawnLayout } from '../statistics/layout/drawn-layout.ts';
import { seededRandom } from '../statistics/random.ts';
import type { SettledRequest } from './planned-files.ts';
import { blindLabels } from './blind-labels.ts';

/** A sowing of a plan: what stands at one place. */
export interface PlannedSowing {
  readonly id: string;
  readonly lot: string;
  readonly treatment: string;
  readonly seeds: number;
  readonly block: string | null;
  /** Row and place in it. */
  readonly position: string;
  /** Code on the container; null where the trial is not blind. */
  readonly label: string | null;
}

/** Places in a row of the bench, where there are no blocks. */
const LONGEST_ROW = 8;

/**
 * The sowings in the order of their places, drawn by lot from the request's seed: complete, or one of each in every
 * block. Which treatment a place has comes from that seed alone; where each lot stands, and the labels, come from
 * the trial's id, so that nothing open lets anyone draw the treatments again.
 */
export function plannedSowings(request: SettledRequest): readonly PlannedSowing[] {
  const { trial, lots, treatments, each, seeds, seed, sowing, scoring } = request;
  const inBlocks = sowing?.assignment === 'random-in-blocks' || (sowing?.assignment === undefined && sowing?.block !== undefined); // prettier-ignore
  const design = { strata: lots, treatments: treatments.map(({ id }) => id), each, inBlocks };
  const drawn = drawnLayout(design, seededRandom(`places of ${trial}`), seededRandom(seed));
  const inRow = inBlocks ? drawn.length / each : Math.min(LONGEST_ROW, Math.ceil(Math.sqrt(drawn.length)));
  const labels = scoring?.blind === 'yes' ? blindLabels(drawn.length, seededRandom(`labels of ${trial}`)) : null;
  const digits = Math.max(2, String(drawn.length).length);
  return drawn.map(({ stratum: lot, treatment, block }, index) => ({
    id: `s${String(index + 1).padStart(digits, '0')}`,
    lot,
    treatment,
    seeds,
    block: block === null ? null : `${sowing?.block ?? ''} ${block}`.trim(),
    position: `${Math.floor(index / inRow) + 1}-${(index % inRow) + 1}`,
    label: labels?.[index] ?? null,
  }));
}
