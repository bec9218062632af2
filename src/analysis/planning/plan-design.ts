/** A trial that has not been sown: what is asked and how much is sown for it. */
export interface PlanDesign {
  readonly measure: 'germination' | 't50' | 'trait';
  /** Of the control: seeds of 100 that come up, days by which half are up, or the mean of the trait. */
  readonly base: number;
  /** Smallest difference that matters: points per 100, days, or the unit of the trait. */
  readonly matters: number;
  /** Trays (or whatever is treated separately) of each treatment, for each crop. */
  readonly units: number;
  /** Seeds in each of them. Traits: not used, `spread` says it all. */
  readonly seeds: number;
  /**
   * How much trays treated alike differ. Germination: φ, 1 for the luck of single seeds, 2 for twice that variance. Times:
   * standard deviation between trays of the true time to half, days. Traits: standard deviation of tray means.
   */
  readonly spread: number;
  /** Each is a lot with its own trays of both treatments. */
  readonly crops: number;
  /** Every block holds one tray of each treatment (methods 3). Used from three blocks on. */
  readonly inBlocks: boolean;
  /** Times only. */
  readonly timing: PlanTiming | null;
}

/** What a time is read from. */
export interface PlanTiming {
  /** Days between checks; the first check is one such gap after sowing. */
  readonly every: number;
  /** Standard deviation between the seeds of one tray, days. */
  readonly seedSpread: number;
  /** Seeds of 100 that come up at all. */
  readonly germination: number;
}

/** A design with what is commonly left open: one crop, no blocks, spread and timing as planned where nothing is known. */
export function planDesign(
  parts: Partial<PlanDesign> & Pick<PlanDesign, 'measure' | 'base' | 'matters' | 'units'>,
): PlanDesign {
  const { measure, base } = parts;
  return {
    seeds: 50,
    spread: measure === 'germination' ? USUAL.germination : USUAL.means * base,
    crops: 1,
    inBlocks: false,
    timing: measure === 't50' ? { every: 1, seedSpread: USUAL.seeds * base, germination: 80 } : null,
    ...parts,
  };
}

/** Common practice for planning, no source: φ = 2; trays differ by a tenth of the mean, single seeds' times by a quarter. */
const USUAL = { germination: 2, means: 0.1, seeds: 0.25 };
