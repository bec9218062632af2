import type { Sowing, Trial } from '../../trial/trial.ts';

/**
 * How one lot was laid out, from all its sowings, whether or not they enter an outcome: what was
 * left out later does not turn a tray back into a unit of its own.
 */
export interface LotDesign {
  readonly lot: string;
  /** Storage times in rising order; `[null]` outside a storage series. */
  readonly times: readonly (number | null)[];
  /** Treatment ids present in the lot, in the order of the trial. */
  readonly treatments: readonly string[];
  readonly control: string | null;
  /** Sowings of a treatment at a storage time. At 0 those without a treatment are the start of every treatment. */
  sowingsOf(treatment: string, stored: number | null): readonly Sowing[];
  /**
   * The lot's batches can be the units of this treatment: two or more, an untreated control with none, or none
   * named where each sowing was treated by itself and so is a batch of one.
   */
  hasBatches(treatment: string, stored: number | null): boolean;
  /** Two jars or packets, or more, were opened: batches, or single sowings where each was treated by itself. */
  isStoredApart(treatment: string, stored: number | null): boolean;
  /**
   * The tray where trays hold several treatments of the lot, else the block that was given. Where only some
   * trays do and no block was given, it is the tray all the same, and the blocks are incomplete.
   */
  blockOf(sowing: Sowing): string | null;
  isSharedTray(sowing: Sowing): boolean;
}

/** Designs by lot, worked out once for each trial, which never changes. */
const known = new WeakMap<Trial, Map<string, LotDesign>>();

/** @returns the design of the lot with this id */
export function lotDesign(trial: Trial, lot: string): LotDesign {
  const designs = known.get(trial) ?? new Map<string, LotDesign>();
  known.set(trial, designs);
  const design = designs.get(lot) ?? designOf(trial, lot);
  designs.set(lot, design);
  return design;
}

function designOf(trial: Trial, lot: string): LotDesign {
  const sowings = trial.sowings.filter((sowing) => sowing.lot === lot);
  const times = [...new Set(sowings.map(({ stored }) => stored))].sort((a, b) => (a ?? 0) - (b ?? 0));
  const control = trial.treatments.find((treatment) => treatment.control)?.id ?? null;

  const groups = new Map(
    [...Map.groupBy(sowings, ({ stored }) => stored)].map(([stored, alike]) => [
      stored,
      Map.groupBy(alike, ({ treatment }) => treatment),
    ]),
  );
  const sowingsOf = (treatment: string, stored: number | null) => {
    const alike = groups.get(stored);
    return alike?.get(treatment) ?? (stored === 0 ? alike?.get(null) : undefined) ?? [];
  };
  const treatmentsInTray = new Map<string, Set<string | null>>();
  for (const sowing of sowings) {
    if (sowing.tray === null) continue;
    const key = trayKey(sowing);
    treatmentsInTray.set(key, (treatmentsInTray.get(key) ?? new Set()).add(sowing.treatment));
  }
  const isSharedTray = (sowing: Sowing) =>
    sowing.tray !== null && (treatmentsInTray.get(trayKey(sowing))?.size ?? 0) > 1;
  const allShared = sowings.length > 0 && sowings.every(isSharedTray);
  const someShared = sowings.some(isSharedTray);
  const isEachTreated = trial.sowing.treated === 'each-sowing';

  return {
    lot,
    times,
    treatments: trial.treatments.map(({ id }) => id).filter((id) => times.some((time) => sowingsOf(id, time).length)),
    control,
    sowingsOf,
    hasBatches: (treatment, stored) => hasBatches(sowingsOf(treatment, stored), treatment === control || isEachTreated),
    isStoredApart: (treatment, stored) => {
      const opened = sowingsOf(treatment, stored);
      return opened.length >= 2 && hasBatches(opened, isEachTreated);
    },
    blockOf: (sowing) => (allShared ? sowing.tray : (sowing.block ?? (someShared ? sowing.tray : null))),
    isSharedTray,
  };
}

const trayKey = ({ tray, stored }: Sowing): string => JSON.stringify([tray, stored]);

function hasBatches(sowings: readonly Sowing[], mayNameNone: boolean): boolean {
  const batches = new Set(sowings.map(({ batch }) => batch)); // sowings without one are together one batch
  if ([...batches].every((batch) => batch === null)) return mayNameNone;
  return batches.size >= 2;
}
