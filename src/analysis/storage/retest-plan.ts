import { addYears } from '../../trial/text/add-years.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Analysis, Group, Range } from '../analysis.ts';

/** When stored seed is to be tested again, how much of it is left for that, and how it stands. */
export interface RetestPlan {
  /** Planned tests that are not sown yet, in order; `date` null where the start of storage is not known. */
  readonly tests: readonly { readonly years: number; readonly date: string | null }[];
  /** By treatment, in the order of the trial; only those of which trial.yaml says what is left. */
  readonly left: readonly {
    readonly treatment: string;
    /** Packets or jars. */
    readonly left: number;
    /** Opened at the last test. */
    readonly opened: number;
  }[];
  /** How the last test of each lot and treatment stands to the level at which the group grows a lot anew. */
  readonly levels: readonly Level[];
}

export interface Level {
  readonly lot: string;
  readonly treatment: string;
  readonly stored: number;
  /** What came up at the start and at the last test, %, and what the data of the last test fit with. */
  readonly initial: number;
  readonly last: number;
  readonly interval: Range;
  /** The share of the first germination that the group has set, as % of seeds sown. */
  readonly level: number;
  /** `unclear`: the data of the last test fit with both. */
  readonly side: 'above' | 'below' | 'unclear';
}

/** A test up to a week before its time is that test. */
const A_WEEK = 0.02;

/**
 * Retest planning of a storage series: what trial.yaml plans and what is left, with the level of regeneration that the
 * group has set. Nothing is forecast: the level is held against the last test.
 *
 * @param regenerateBelow % of the germination at the start (site.yaml), or null
 * @returns null where the trial is no series, or nothing is planned, left or to be held against a level
 */
export function retestPlan(trial: Trial, analysis: Analysis, regenerateBelow: number | null): RetestPlan | null {
  const { storage } = trial;
  const sown = trial.sowings.flatMap(({ stored }) => stored ?? []);
  if (storage === null && sown.length === 0) return null;
  const done = Math.max(-1, ...sown);
  const started = storage?.started ?? null;
  const plan = {
    tests: (storage?.tests ?? [])
      .filter((years) => years > done + A_WEEK)
      .toSorted((a, b) => a - b)
      .map((years) => ({ years, date: started === null ? null : addYears(started, years) })),
    left: leftOf(trial, done),
    levels: regenerateBelow === null ? [] : levelsOf(analysis, regenerateBelow),
  };
  return plan.tests.length + plan.left.length + plan.levels.length > 0 ? plan : null;
}

/** Jars opened at the last test: the batches named, else a sowing each. */
function leftOf({ storage, treatments, sowings }: Trial, done: number): RetestPlan['left'] {
  return treatments.flatMap(({ id }) => {
    const left = storage?.left[id];
    if (left === undefined) return [];
    const last = sowings.filter(({ treatment, stored }) => treatment === id && stored === done && stored > 0);
    const opened = new Set(last.map((sowing) => JSON.stringify([sowing.lot, sowing.batch ?? sowing.id])));
    return [{ treatment: id, left, opened: opened.size }];
  });
}

function levelsOf({ results }: Analysis, regenerateBelow: number): readonly Level[] {
  const result = results.find(({ measure }) => measure === 'storage') ?? results.find(({ measure }) => measure === 'germination'); // prettier-ignore
  const series = Map.groupBy(result?.groups ?? [], ({ lot, treatment }) => JSON.stringify([lot, treatment]));
  return [...series.values()].flatMap((groups) => {
    const known = groups.filter((group) => group.stored !== null && group.estimate !== null && group.interval !== null);
    const start = known.find(({ stored }) => stored === 0);
    const last = known.toSorted((a, b) => (a.stored ?? 0) - (b.stored ?? 0)).at(-1);
    if (start === undefined || last === undefined || last === start) return [];
    return [levelOf(start, last, regenerateBelow)];
  });
}

function levelOf(start: Group, last: Group, regenerateBelow: number): Level {
  const initial = start.estimate ?? 0;
  const level = (initial * regenerateBelow) / 100;
  const { lower = null, upper = null } = last.interval ?? {};
  // As whole numbers, as they are told: a range whose end is told as the level itself is too near.
  const [least, most, limit] = [lower ?? 0, upper ?? 100, level].map(Math.round) as [number, number, number];
  const side = most < limit ? 'below' : least > limit ? 'above' : 'unclear';
  const { lot, treatment, stored, estimate } = last;
  return { lot, treatment, stored: stored ?? 0, initial, last: estimate ?? 0, interval: { lower, upper }, level, side };
}
