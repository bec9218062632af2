import type { Analysis, Moisture, Range } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';

/** The weighings of one lot and treatment taken together; percentages. */
export interface MoistureFacts {
  readonly lot: string;
  readonly treatment: string | null;
  readonly weighings: number;
  readonly lost: Span | null;
  /** What the scale's steps allow; null where a step was not given. */
  readonly lostAllowed: Span | null;
  /** Grams; null where not given or not one and the same. */
  readonly scaleStep: number | null;
  readonly before: Span | null;
  readonly after: Span | null;
  readonly afterAllowed: Span | null;
}

export interface Span {
  readonly lower: number;
  readonly upper: number;
}

/** Moisture rows by lot and treatment, in the order of the analysis. */
export function moistureFacts(trial: Trial, { moisture }: Analysis): readonly MoistureFacts[] {
  const groups = Map.groupBy(moisture, ({ lot, treatment }) => JSON.stringify([lot, treatment]));
  return [...groups.values()].map((rows) => factsOf(trial, rows));
}

function factsOf(trial: Trial, rows: readonly Moisture[]): MoistureFacts {
  const { lot = '', treatment = null } = rows[0] ?? {};
  const steps = new Set(
    trial.weighings
      .filter((weighing) => weighing.lot === lot && weighing.treatment === treatment)
      .map(({ scaleStep }) => scaleStep),
  );
  const [step = null] = steps;
  return {
    lot,
    treatment,
    weighings: rows.length,
    lost: spanOf(rows.map((row) => row.waterLost)),
    lostAllowed: hullOf(rows.map((row) => row.waterLostRange)),
    scaleStep: steps.size === 1 ? step : null,
    before: spanOf(rows.map((row) => row.moistureBefore)),
    after: spanOf(rows.map((row) => row.moistureAfter)),
    afterAllowed: hullOf(rows.map((row) => row.moistureAfterRange)),
  };
}

function spanOf(values: readonly (number | null)[]): Span | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : { lower: Math.min(...known), upper: Math.max(...known) };
}

/** Over all rows; null where one of them is not known. */
function hullOf(ranges: readonly (Range | null)[]): Span | null {
  const lower = ranges.map((range) => range?.lower ?? null);
  const upper = ranges.map((range) => range?.upper ?? null);
  if ([...lower, ...upper].includes(null)) return null;
  return spanOf([...lower, ...upper]);
}
