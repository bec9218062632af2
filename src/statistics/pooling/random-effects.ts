import { median } from 'simple-statistics';
import { normalQuantile, normalUpper } from '../distributions/normal.ts';
import { tQuantile, tTwoSided } from '../distributions/t.ts';
import { heterogeneity, type Heterogeneity } from './heterogeneity.ts';
import { remlVariance } from './reml-variance.ts';
import { checkStudies, type Study } from './study.ts';

interface Limits {
  readonly lower: number;
  readonly upper: number;
}

export interface RandomEffects extends Heterogeneity {
  readonly estimate: number;
  /** 95 %; `knapp-hartung`: t on K − 1; `normal`: the z interval, where that is the wider and the guard takes it. */
  readonly interval: Limits & { readonly method: 'knapp-hartung' | 'normal' };
  /** Of no difference at all; df null where the normal distribution gave the larger p. */
  readonly test: { readonly statistic: number; readonly df: number | null; readonly p: number };
  /** Where the true difference of another trial may lie, 95 %. */
  readonly prediction: Limits;
  /** Where the result of another trial of ordinary size may fall, 95 %. */
  readonly nextResult: Limits;
  /** The Knapp–Hartung standard error was below the ordinary one. */
  readonly guarded: boolean;
  readonly tau2: number;
  /** Share of each trial in the estimate, percent, in the order given. */
  readonly weights: readonly number[];
}

/** With equal standard errors and τ² above 0 both are the same but for rounding; then nothing is guarded. */
const ALIKE = 1 - 1e-9;

/**
 * Trials of one question put together: the random-effects mean with τ² by restricted maximum likelihood and the
 * interval of Knapp and Hartung on K − 1 degrees of freedom. Few trials that happen to agree give that interval a
 * standard error below the ordinary one of the same fit; then the wider of the two intervals and the larger p are taken.
 *
 * @param studies two or more, of trials that share nothing
 * @throws {RangeError} with fewer than two, or where a standard error is not above 0
 *
 * Source: Knapp & Hartung (2003), Stat. Med. 22, 2693–2710 (from memory); prediction after Higgins, Thompson &
 * Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159 (from memory), on K − 1 degrees of freedom.
 * Checked against: the same written out in R, with `optimise`; published fits (tests/reference/r/pooling.R).
 */
export function randomEffects(studies: readonly Study[]): RandomEffects {
  checkStudies('randomEffects', studies, 2);
  const df = studies.length - 1;
  const tau2 = remlVariance(studies);
  const raw = studies.map(({ se }) => 1 / (se ** 2 + tau2));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const weights = raw.map((weight) => weight / total);
  const weighted = (value: (study: Study) => number) =>
    studies.reduce((sum, study, index) => sum + (weights[index] ?? 0) * value(study), 0);
  const estimate = weighted((study) => study.estimate);
  const ordinary = 1 / Math.sqrt(total);
  const adjusted = Math.sqrt(weighted((study) => (study.estimate - estimate) ** 2) / df);
  const guarded = adjusted < ordinary * ALIKE;

  const around = (half: number): Limits => ({ lower: estimate - half, upper: estimate + half });
  const t = tQuantile(0.975, df);
  const z = normalQuantile(0.975);
  const isNormal = guarded && z * ordinary > t * adjusted;
  const beyond = (extra: number) => around(t * Math.sqrt(tau2 + Math.max(ordinary, adjusted) ** 2 + extra));
  return {
    estimate,
    interval: { ...around(isNormal ? z * ordinary : t * adjusted), method: isNormal ? 'normal' : 'knapp-hartung' },
    test: testOf(estimate, { ordinary, adjusted, df, guarded }),
    prediction: beyond(0),
    nextResult: beyond(median(studies.map(({ se }) => se ** 2))),
    guarded,
    tau2,
    weights: weights.map((weight) => 100 * weight),
    ...heterogeneity(studies, tau2),
  };
}

interface Errors {
  readonly ordinary: number;
  readonly adjusted: number;
  readonly df: number;
  readonly guarded: boolean;
}

/** Knapp–Hartung's t, or the ordinary z where the guard applies and gives the larger p. */
function testOf(estimate: number, { ordinary, adjusted, df, guarded }: Errors): RandomEffects['test'] {
  const z = { statistic: estimate / ordinary, df: null, p: 2 * normalUpper(Math.abs(estimate / ordinary)) };
  if (adjusted === 0) return z;
  const t = { statistic: estimate / adjusted, df, p: tTwoSided(estimate / adjusted, df) };
  return guarded && z.p > t.p ? z : t;
}
