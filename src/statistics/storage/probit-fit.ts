import { checkCounted, type Counted } from '../counted.ts';
import { normalCdf, normalQuantile, normalUpper } from '../distributions/normal.ts';
import { inverseSymmetric } from './inverse-symmetric.ts';

/** Seeds that came up, and what their probit depends on: one number a parameter. */
export interface ProbitRow extends Counted {
  readonly x: readonly number[];
}

export interface ProbitFit {
  /** One a column of `x`, in its unit: probits (normal equivalent deviates, no 5 added) per unit of x. */
  readonly coefficients: readonly number[];
  /** Of the coefficients, for seeds that are independent; times φ* where units differ more. */
  readonly covariance: readonly (readonly number[])[];
  readonly deviance: number;
  /** Pearson's X² of the fit. */
  readonly pearson: number;
}

const ROUNDS = 50;
const CUT = 8;

/**
 * Probit regression by binomial maximum likelihood: iteratively reweighted least squares from the least-squares
 * line on probits of (x + ½)/(n + 1), steps halved while the deviance rises, until it changes by less than
 * 1e-12 of itself; the linear predictor is cut at ± 8, where a share is 0 or 1 for every purpose.
 *
 * @param rows one a unit; all `x` of the same length
 * @returns null where the rows cannot tell the parameters apart, or 50 rounds do not settle it
 * @throws {RangeError} when a row is not a count out of seeds, or there is none
 *
 * Source: Finney (1971), Probit Analysis; McCullagh & Nelder (1989) section 2.5; both from memory.
 * Checked against: R `glm(family = binomial("probit"))`, live and on the rotenone data of Finney (Martin 1942)
 * and the beetles of Bliss (1935).
 */
export function probitFit(rows: readonly ProbitRow[]): ProbitFit | null {
  const size = rows[0]?.x.length ?? 0;
  if (size === 0) throw new RangeError('probitFit needs at least one row with one parameter');
  for (const row of rows) checkCounted('probitFit', row);

  let coefficients = weightedFit(rows, startingProbits(rows), rows.map(() => 1))?.coefficients ?? null; // prettier-ignore
  if (coefficients === null) return null;
  let deviance = devianceOf(rows, coefficients);
  for (let round = 0; round < ROUNDS; round++) {
    const { working, weights } = reweighted(rows, coefficients);
    const next = weightedFit(rows, working, weights);
    if (next === null) return null;
    const step = halved(rows, coefficients, next.coefficients, deviance);
    const change = Math.abs(deviance - step.deviance);
    coefficients = step.coefficients;
    deviance = step.deviance;
    if (change <= 1e-12 * (deviance + 0.1)) return finished(rows, coefficients, deviance);
  }
  return null;
}

/** The way to the new coefficients, halved until the deviance no longer rises. */
function halved(rows: readonly ProbitRow[], from: readonly number[], to: readonly number[], before: number) {
  for (let share = 1; share > 1e-9; share /= 2) {
    const coefficients = from.map((value, index) => value + share * ((to[index] ?? 0) - value));
    const deviance = devianceOf(rows, coefficients);
    if (deviance <= before * (1 + 1e-14) + 1e-14) return { coefficients, deviance };
  }
  return { coefficients: [...from], deviance: before };
}

function finished(rows: readonly ProbitRow[], coefficients: readonly number[], deviance: number): ProbitFit | null {
  const covariance = inverseSymmetric(information(rows, reweighted(rows, coefficients).weights));
  if (covariance === null) return null;
  const pearson = rows.reduce((sum, row) => {
    const { share, rest } = sharesAt(predictor(row, coefficients));
    return sum + (row.count - row.seeds * share) ** 2 / (row.seeds * share * rest);
  }, 0);
  return { coefficients, covariance, deviance, pearson };
}

const startingProbits = (rows: readonly ProbitRow[]): number[] =>
  rows.map(({ count, seeds }) => normalQuantile((count + 0.5) / (seeds + 1)));

const predictor = ({ x }: ProbitRow, coefficients: readonly number[]): number => {
  const eta = x.reduce((sum, value, index) => sum + value * (coefficients[index] ?? 0), 0);
  return Math.max(-CUT, Math.min(CUT, eta));
};

/** Both tails by themselves, so that neither loses its digits. */
const sharesAt = (eta: number) => ({ share: normalCdf(eta), rest: normalUpper(eta) });

function reweighted(rows: readonly ProbitRow[], coefficients: readonly number[]) {
  const pieces = rows.map((row) => {
    const eta = predictor(row, coefficients);
    const { share, rest } = sharesAt(eta);
    const density = Math.exp((-eta * eta) / 2) / Math.sqrt(2 * Math.PI);
    const observed = row.count / row.seeds;
    return { working: eta + (observed - share) / density, weight: (row.seeds * density ** 2) / (share * rest) };
  });
  return { working: pieces.map(({ working }) => working), weights: pieces.map(({ weight }) => weight) };
}

/** XᵀWX. */
function information(rows: readonly ProbitRow[], weights: readonly number[]): number[][] {
  const columns = (rows[0]?.x ?? []).map((_, index) => index);
  const sum = (a: number, b: number) =>
    rows.reduce((total, { x }, index) => total + (weights[index] ?? 0) * (x[a] ?? 0) * (x[b] ?? 0), 0);
  return columns.map((a) => columns.map((b) => sum(a, b)));
}

function weightedFit(rows: readonly ProbitRow[], y: readonly number[], weights: readonly number[]) {
  const inverse = inverseSymmetric(information(rows, weights));
  if (inverse === null) return null;
  const moments = inverse.map((_, column) =>
    rows.reduce((sum, { x }, index) => sum + (weights[index] ?? 0) * (x[column] ?? 0) * (y[index] ?? 0), 0),
  );
  return {
    coefficients: inverse.map((row) => row.reduce((sum, value, index) => sum + value * (moments[index] ?? 0), 0)),
  };
}

/** Twice the log-likelihood that the fit falls short of a perfect one. */
function devianceOf(rows: readonly ProbitRow[], coefficients: readonly number[]): number {
  const part = (observed: number, expected: number) => (observed === 0 ? 0 : observed * Math.log(observed / expected));
  return rows.reduce((sum, row) => {
    const { share, rest } = sharesAt(predictor(row, coefficients));
    return sum + 2 * (part(row.count, row.seeds * share) + part(row.seeds - row.count, row.seeds * rest));
  }, 0);
}
