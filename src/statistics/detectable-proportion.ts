import { tQuantile } from './distributions/t.ts';

/** What a comparison of two proportions could see. `level` is the two-sided error rate (0.05). */
export interface ProportionDesign {
  /** Proportion of the control, strictly between 0 and 1. */
  readonly share: number;
  /** Seeds of the control and of the treatment. */
  readonly control: number;
  readonly treated: number;
  /** φ* and ν of shrunkDispersion. */
  readonly used: number;
  readonly dfUsed: number;
  readonly level?: number;
  readonly power?: number;
}

/**
 * Smallest difference that such a comparison shows with the wanted power: d solving
 * d = (t₁₋α/₂ + t_power) √(φ*(p₀q₀/N_c + p₁q₁/N_t)), p₁ = p₀ ± d, a quadratic in d. Of the two directions
 * the larger that exists.
 *
 * @returns a proportion, or null where neither direction has room for it
 * @throws {RangeError} on a share outside 0–1, sizes not above 0, φ* below 1
 *
 * Source: methods.md 7; normal approximation with t quantiles. Checked against: R `uniroot` in each direction.
 */
export function detectableProportion(design: ProportionDesign): number | null {
  const { share, control, treated, used, dfUsed, level = 0.05, power = 0.8 } = design;
  if (!(share > 0 && share < 1 && control > 0 && treated > 0 && used >= 1 && level < 1 && power > level)) {
    throw new RangeError(`detectableProportion needs a share, sizes and a dispersion, got ${JSON.stringify(design)}`);
  }
  const k = used * (tQuantile(1 - level / 2, dfUsed) + tQuantile(power, dfUsed)) ** 2;
  const variance = share * (1 - share);
  const found = [1, -1].flatMap((direction) => {
    // a d² − b d − c = 0, with one positive root
    const a = 1 + k / treated;
    const b = (k * direction * (1 - 2 * share)) / treated;
    const c = k * variance * (1 / control + 1 / treated);
    const d = (b + Math.sqrt(b ** 2 + 4 * a * c)) / (2 * a);
    return d <= (direction === 1 ? 1 - share : share) ? [d] : [];
  });
  return found.length === 0 ? null : Math.max(...found);
}
