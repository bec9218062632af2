/** Constants of a species in the improved viability equation. */
export interface ViabilityConstants {
  readonly ke: number;
  readonly cw: number;
  readonly ch: number;
  readonly cq: number;
}

/**
 * The time in storage in which viability falls by one probit, by the improved viability equation:
 * log₁₀ σ = K_E − C_W log₁₀ m − C_H t − C_Q t². It extrapolates; below −C_H/(2 C_Q) °C it turns round and is wrong.
 *
 * @param moisture    percent wet basis, above 0 and below 100
 * @param temperature °C
 * @returns σ in days
 * @throws {RangeError} outside those, or below the temperature at which the equation turns round
 *
 * Source: Ellis & Roberts (1980), Ann. Bot. 45, 13–30 and 31–37, from memory.
 * Checked against: R arithmetic for 18 species at three moistures and temperatures (own worked examples; no published
 * numeric example could be read).
 */
export function viabilityPeriod({ ke, cw, ch, cq }: ViabilityConstants, moisture: number, temperature: number): number {
  const turns = -ch / (2 * cq);
  if (!(moisture > 0 && moisture < 100 && temperature > turns)) {
    throw new RangeError(
      `viabilityPeriod needs a moisture between 0 and 100 and a temperature above ${turns}, got ${moisture} and ${temperature}`,
    );
  }
  return 10 ** (ke - cw * Math.log10(moisture) - ch * temperature - cq * temperature ** 2);
}
