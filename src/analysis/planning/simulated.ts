import type { Simulation } from './simulate-plan.ts';
import type { Tally } from './tally.ts';

/** A share of simulated trials, 0 to 1, with its Monte Carlo standard error; null where there were none. */
export interface Rate {
  readonly share: number;
  readonly error: number;
}

/** What simulation says about one kind of comparison. Differences are treatment minus control. */
export interface Chances {
  /** The difference is there, and is shown, the right way round. */
  readonly shown: Rate;
  /** The same, still so when p is adjusted for the number of crops (Holm). */
  readonly shownFirmly: Rate;
  /** There is none, and one is shown. */
  readonly falseAlarm: Rate;
  /** There is none, and the test gives 0.05 or less; the verdict goes by the range. */
  readonly smallP: Rate;
  /** There is none, and it is shown that any is smaller than what matters. */
  readonly alike: Rate;
  /** The difference is there, and is called too small to matter. */
  readonly falselyAlike: Rate;
  /** The 95 % range holds the truth: with the difference there, and with none. */
  readonly covered: Rate;
  readonly coveredNone: Rate;
  /** Half the width of the range with the difference there, mean over trials, with its Monte Carlo standard error. */
  readonly halfWidth: { readonly value: number; readonly error: number };
  /** Mean limits of the range: with the difference there, and with none. */
  readonly range: { readonly lower: number; readonly upper: number };
  readonly rangeNone: { readonly lower: number; readonly upper: number };
}

/** The whole simulation of a plan. */
export interface Simulated {
  readonly trials: number;
  /** One crop by itself; null with one unit of each. */
  readonly crop: Chances | null;
  /** All crops together; null where they cannot be put together. */
  readonly together: Chances | null;
  /** There is no difference in any crop, and at least one is shown in some crop: as it is, and after Holm. */
  readonly anyAlarm: Rate;
  readonly anyFirmAlarm: Rate;
}

/** Rates, widths and limits of a simulation, each with its Monte Carlo standard error. */
export function simulated({ trials, there, none }: Simulation): Simulated {
  return {
    trials,
    crop: chances(there.crops, none.crops),
    together: chances(there.together, none.together),
    anyAlarm: rate(none.anyShown, trials),
    anyFirmAlarm: rate(none.anyFirm, trials),
  };
}

function chances(there: Tally, none: Tally): Chances | null {
  if (there.known < 2 || none.known < 2) return null;
  const width = there.width / there.known;
  const variance = Math.max(0, there.squares / there.known - width ** 2);
  const isAbove = there.lower + there.upper > 0;
  return {
    shown: rate(isAbove ? there.above : there.below, there.comparisons),
    shownFirmly: rate(there.firm, there.comparisons),
    falseAlarm: rate(none.above + none.below, none.comparisons),
    smallP: rate(none.smallP, none.comparisons),
    alike: rate(none.alike, none.comparisons),
    falselyAlike: rate(there.alike, there.comparisons),
    covered: rate(there.covered, there.known),
    coveredNone: rate(none.covered, none.known),
    halfWidth: { value: width / 2, error: Math.sqrt(variance / there.known) / 2 },
    range: limits(there),
    rangeNone: limits(none),
  };
}

const limits = ({ lower, upper, known }: Tally) => ({ lower: lower / known, upper: upper / known });

/** Standard error with half a success and half a failure added, so that none in all is not without doubt. */
function rate(count: number, of: number): Rate {
  const guarded = (count + 0.5) / (of + 1);
  return { share: count / of, error: Math.sqrt((guarded * (1 - guarded)) / of) };
}
