/** How often simulated comparisons of one kind came out how. Plain sums, so that parts of a simulation add up. */
export interface Tally {
  readonly comparisons: number;
  /** With an interval; coverage and width are of these. */
  readonly known: number;
  /** The range excludes no difference (`different`, `matters`, `same` off zero): above 0 and below. */
  readonly above: number;
  readonly below: number;
  /** As `above` and `below`, and with a p that stays at most 0.05 when adjusted for the number of crops (Holm). */
  readonly firm: number;
  /** p at most 0.05, whatever the range says. */
  readonly smallP: number;
  readonly alike: number;
  /** The interval holds the true difference. */
  readonly covered: number;
  /** Sums over the known: width, its squares, lower and upper limit. */
  readonly width: number;
  readonly squares: number;
  readonly lower: number;
  readonly upper: number;
}

/** Nothing counted yet. */
export const NONE: Tally = {
  comparisons: 0,
  known: 0,
  above: 0,
  below: 0,
  firm: 0,
  smallP: 0,
  alike: 0,
  covered: 0,
  width: 0,
  squares: 0,
  lower: 0,
  upper: 0,
};
